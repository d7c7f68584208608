#include "app/desktop/circuit/circuit_view.h"
#include "app/desktop/circuit/layout.h"
#include "app/desktop/panels/parts_drawer.h"
#include "app/desktop/panels/parts_model.h"
#include "tests/app/window/first_circuit.h"

#include <QApplication>
#include <QDockWidget>
#include <QMenu>
#include <QMenuBar>
#include <QScrollBar>
#include <QToolBar>
#include <QToolButton>
#include <QTreeView>

using namespace pumpwright;

namespace {

constexpr int kMostClicks = 120;
constexpr int kMostActions = 60; ///< of somebody new: clicks and drags
constexpr std::size_t kMostPanels = 2;

/// In the order of the Parts drawer, so that its list is gone through once.
const std::vector<const char*> kEntries{"battery-45-ah", "blade-fuse-15-a",    "timer-run-on-5-a",
                                        "relay-30-a",    "vacuum-switch-fine", "diode-1-a",
                                        "pump-small",    "booster-7-in",       "ground-bolt"};

using Ends = std::vector<std::pair<const char*, const char*>>;

const Ends kWires{{"G1.30", "F1.1"}, {"F1.2", "K1.15"},  {"K1.15", "K1.30"}, {"K1.30", "B1.1"},
                  {"B1.2", "K1.S"},  {"K1.87", "K2.86"}, {"K2.85", "X1.31"}, {"F1.2", "K2.30"},
                  {"K2.87", "M1.+"}, {"M1.-", "X1.31"},  {"K1.31", "X1.31"}, {"G1.31", "X1.31"},
                  {"R1.A", "K2.85"}, {"R1.K", "K2.86"}};
const Ends kHoses{{"A1.vacuum", "M1.inlet"}, {"A1.vacuum", "B1.vacuum"}};

/// A left button, and nothing else; it hits only what can be seen there.
class Mouse {
public:
    explicit Mouse(WindowBench& bench) : m_bench(bench) {}

    void click(QWidget& widget, const QPoint& at) {
        look(widget, at);
        QTest::mouseMove(&widget, at);
        QTest::mouseClick(&widget, Qt::LeftButton, {}, at);
        afterAction(widget);
    }
    void drag(QWidget& widget, const QPoint& from, const QPoint& to) {
        look(widget, from);
        look(widget, to);
        QTest::mousePress(&widget, Qt::LeftButton, {}, from);
        moveHeld(widget, (from + to) / 2);
        moveHeld(widget, to);
        QTest::mouseRelease(&widget, Qt::LeftButton, {}, to);
        afterAction(widget);
    }
    int count() const { return m_count; }
    const std::set<const QWidget*>& panels() const { return m_panels; }

private:
    void look(const QWidget& widget, const QPoint& at) {
        INFO("after " << m_count << " at " << widget.metaObject()->className());
        REQUIRE(widget.isVisible());
        REQUIRE(widget.visibleRegion().contains(at));
    }
    static void moveHeld(QWidget& widget, const QPoint& at) {
        QMouseEvent event(QEvent::MouseMove, at, widget.mapToGlobal(at), Qt::NoButton, Qt::LeftButton,
                          Qt::NoModifier);
        QCoreApplication::sendEvent(&widget, &event);
    }
    void afterAction(const QWidget& widget) {
        ++m_count;
        CHECK(QApplication::activeModalWidget() == nullptr);
        for (const QDockWidget* panel : m_bench.window.findChildren<QDockWidget*>()) {
            if (panel->isAncestorOf(&widget)) {
                m_panels.insert(panel);
            }
        }
        QCoreApplication::processEvents();
    }

    WindowBench& m_bench;
    int m_count = 0;
    std::set<const QWidget*> m_panels;
};

/// Somebody who draws the first circuit with a mouse.
class Drawer {
public:
    explicit Drawer(WindowBench& bench) : mouse(bench), m_bench(bench) {}

    /// Closes the Drive chart, so that there is room.
    void makeRoom() {
        auto* chart = m_bench.window.findChild<QDockWidget*>(QStringLiteral("driveChart"));
        click(*chart->titleBarWidget()->findChildren<QToolButton*>().back());
        auto* studies = m_bench.window.findChild<QDockWidget*>(QStringLiteral("studies"));
        click(*studies->titleBarWidget()->findChildren<QToolButton*>().back());
        QTest::qWait(50);
    }
    void placeParts() {
        for (std::size_t i = 0; i < kEntries.size(); ++i) {
            take(kEntries[i]);
            mouse.click(paper(), placeOf(i));
        }
    }
    void wireByClicks() {
        tool("Wire");
        clickPairs(kWires);
        tool("Hose");
        clickPairs(kHoses);
    }
    void wireByDrags() {
        tool("Select");
        for (const Ends* ends : {&kWires, &kHoses}) {
            for (const auto& [from, to] : *ends) {
                mouse.drag(paper(), pixelOf(from), pixelOf(to));
            }
        }
    }
    void writeSheet(const QString& path) {
        m_bench.dialogs->path = path;
        auto* bar = m_bench.window.findChild<QMenuBar*>();
        QAction* file = bar->actions().front();
        mouse.click(*bar, bar->actionGeometry(file).center());
        QAction* write = named(*file->menu(), "Export");
        mouse.click(*file->menu(), file->menu()->actionGeometry(write).center());
        QAction* pdf = named(*write->menu(), "Wiring sheet as PDF…");
        mouse.click(*write->menu(), write->menu()->actionGeometry(pdf).center());
    }

    Mouse mouse;

private:
    QWidget& paper() { return *m_bench.window.circuitView().viewport(); }
    void click(QWidget& widget) { mouse.click(widget, widget.rect().center()); }
    const Circuit& circuit() { return m_bench.window.document().circuit(); }

    static QAction* named(const QMenu& menu, const char* text) {
        for (QAction* action : menu.actions()) {
            if (action->text().remove(QLatin1Char('&')) == QString::fromUtf8(text)) {
                return action;
            }
        }
        FAIL("no such entry: " << text);
        return nullptr;
    }

    void tool(const char* text) {
        auto* bar = m_bench.window.findChild<QToolBar*>(QStringLiteral("tools"));
        for (QToolButton* button : bar->findChildren<QToolButton*>()) {
            if (button->defaultAction() != nullptr &&
                button->defaultAction()->iconText() == QString::fromLatin1(text)) {
                click(*button);
                return;
            }
        }
        FAIL("no such tool: " << text);
    }

    /// Clicks the entry in the list, after as many clicks on the list's scroll bar as bring it into view.
    void take(const char* entry) {
        QTreeView& list = m_bench.window.findChild<PartsDrawer*>()->list();
        const QModelIndex index = indexOf(list, entry);
        QScrollBar& bar = *list.verticalScrollBar();
        while (!list.viewport()->rect().contains(list.visualRect(index))) {
            const int before = bar.value();
            mouse.click(bar, {bar.width() / 2, bar.height() - bar.width() - 4});
            REQUIRE(bar.value() > before);
        }
        mouse.click(*list.viewport(), list.visualRect(index).center());
        REQUIRE(m_bench.window.circuitView().activity() == CanvasActivity::Place);
    }
    static QModelIndex indexOf(const QTreeView& list, const char* entry) {
        const QAbstractItemModel& model = *list.model();
        for (int group = 0; group < model.rowCount(); ++group) {
            const QModelIndex parent = model.index(group, 0);
            for (int row = 0; row < model.rowCount(parent); ++row) {
                const QModelIndex index = model.index(row, 0, parent);
                if (index.data(PartsModel::EntryIdRole).toString() == QLatin1String(entry)) {
                    return index;
                }
            }
        }
        FAIL("no such entry: " << entry);
        return {};
    }

    /// The middle of one of three by three fields of the canvas.
    QPoint placeOf(std::size_t i) {
        const QSize size = paper().size();
        const int column = static_cast<int>(i % 3);
        const int row = static_cast<int>(i / 3);
        return {size.width() * (2 * column + 1) / 6, size.height() * (2 * row + 1) / 6};
    }
    QPoint pixelOf(const std::string& name) {
        for (const auto& [id, picture] : layoutOf(circuit()).parts) {
            for (const ConnectionPoint& point : picture.points) {
                if (endName(circuit(), {id, point.name}) == name) {
                    return m_bench.window.circuitView().mapFromScene(scenePoint(point.at));
                }
            }
        }
        FAIL("no such end: " << name);
        return {};
    }
    void clickPairs(const Ends& ends) {
        for (const auto& [from, to] : ends) {
            mouse.click(paper(), pixelOf(from));
            mouse.click(paper(), pixelOf(to));
        }
    }

    WindowBench& m_bench;
};

constexpr int kInTheFileDialog = 1; ///< a click on its button for saving

} // namespace

TEST_CASE("the first circuit is drawn, checked, driven and written as a sheet by single clicks alone",
          "[window][first-circuit]") {
    WindowBench bench(wholeCatalogue());
    QTest::qWait(50); // its panels take their sizes
    Drawer drawer(bench);
    drawer.makeRoom();
    drawer.placeParts();
    drawer.wireByClicks();
    checkFirstCircuit(bench.window.document().circuit());
    checkItWorks(bench);
    bench.keepPicture(QStringLiteral("first-circuit-by-clicks.png"));
    drawer.writeSheet(bench.file("first.pdf"));
    const int clicks = drawer.mouse.count() + kInTheFileDialog;
    CHECK(clicks <= kMostClicks);
    checkPdf(bench.dialogs->path);
    CHECK(bench.dialogs->errors.isEmpty());
}

TEST_CASE("somebody new comes from the empty window to the sheet in few actions and two panels",
          "[window][first-circuit]") {
    WindowBench bench(wholeCatalogue());
    QTest::qWait(50);
    bench.window.resize(1920, 1080);
    QTest::qWait(50);
    Drawer drawer(bench);
    drawer.placeParts();
    drawer.wireByDrags();
    checkFirstCircuit(bench.window.document().circuit());
    checkItWorks(bench);
    bench.keepPicture(QStringLiteral("first-circuit-by-drags.png"));
    drawer.writeSheet(bench.file("first.pdf"));
    const int actions = drawer.mouse.count() + kInTheFileDialog;
    CHECK(actions <= kMostActions);
    CHECK(drawer.mouse.panels().size() <= kMostPanels);
    checkPdf(bench.dialogs->path);
    CHECK(bench.dialogs->errors.isEmpty());
}
