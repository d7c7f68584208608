// What leaves the program by the window's menus, comparing, and the handbook.

#include "app/desktop/comparison_window.h"
#include "app/desktop/data_files.h"
#include "app/desktop/handbook_window.h"
#include "app/desktop/panels/findings_panel.h"
#include "core/checks/rule.h"
#include "core/files/circuit_file.h"
#include "tests/app/window/bench.h"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QElapsedTimer>
#include <QFile>
#include <QImage>
#include <QLabel>
#include <QProgressDialog>
#include <QPushButton>
#include <QRegularExpression>
#include <QTableView>
#include <QTextBlock>
#include <QTextBrowser>
#include <QTreeWidget>
#include <QTreeWidgetItemIterator>

using namespace pumpwright;

namespace {

const QString kSample = QStringLiteral("samples/put-right.pumpwright");

QAction* actionNamed(const MainWindow& window, const QString& text) {
    for (QAction* action : window.findChildren<QAction*>()) {
        if (action->text().remove(QLatin1Char('&')) == text) {
            return action;
        }
    }
    FAIL("no action " << text.toStdString());
    return nullptr;
}

/// The window of this sort that the main window opens after a while.
template <class Window>
Window* awaited(const MainWindow& window) {
    Window* opened = nullptr;
    REQUIRE(QTest::qWaitFor([&] { return (opened = window.findChild<Window*>()) != nullptr; }, 60000));
    return opened;
}

QByteArray bytesOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// What the export writes under the given name.
QByteArray exported(WindowBench& bench, const char* action, const char* name) {
    bench.dialogs->path = bench.file(name);
    actionNamed(bench.window, QString::fromUtf8(action))->trigger();
    return bytesOf(bench.dialogs->path);
}

} // namespace

TEST_CASE("everything that leaves as a file is written by the menu", "[window][export]") {
    WindowBench bench;
    REQUIRE(bench.window.openSample(kSample));
    bench.waitForAnalysis();
    CHECK(exported(bench, "Schematic…", "a.svg").contains("<svg"));
    CHECK(exported(bench, "Schematic…", "a.pdf").startsWith("%PDF-"));
    CHECK_FALSE(QImage::fromData(exported(bench, "Schematic…", "a.png")).isNull());
    CHECK_FALSE(QImage::fromData(exported(bench, "Drive chart…", "b.png")).isNull());
    CHECK(exported(bench, "Drive chart…", "b.svg").contains("<svg"));
    CHECK(exported(bench, "Drive chart…", "b.csv").startsWith("time [s],"));
    CHECK(exported(bench, "Wires as table…", "c.csv").startsWith("Wire,From,From terminal,"));
    CHECK(exported(bench, "Parts list as table…", "d.csv").contains(",Total,"));
    CHECK(exported(bench, "Nets as table…", "e.csv").startsWith("Net,Terminals,Wires\n"));
    CHECK(exported(bench, "Findings…", "f.md").startsWith("# Findings"));
    CHECK(exported(bench, "Findings…", "f.json").contains("\"findings\""));
    CHECK(bench.dialogs->errors.isEmpty());
}

TEST_CASE("an export in an unknown form or to nowhere says so", "[window][export]") {
    WindowBench bench;
    REQUIRE(bench.window.openSample(kSample));
    bench.waitForAnalysis();
    CHECK(exported(bench, "Findings…", "f.txt").isEmpty());
    CHECK(exported(bench, "Drive chart…", "b.gif").isEmpty());
    bench.dialogs->path = QStringLiteral("/nowhere/at/all.csv");
    actionNamed(bench.window, QStringLiteral("Wires as table…"))->trigger();
    REQUIRE(bench.dialogs->errors.size() == 3);
    for (const Error& error : bench.dialogs->errors) {
        CHECK(error.code == ErrorCode::FileUnwritable);
    }
}

TEST_CASE("a sheet goes on without fault finding when it is told to", "[window][sheet]") {
    WindowBench bench;
    REQUIRE(bench.window.openSample(kSample));
    bench.waitForAnalysis();
    bench.dialogs->path = bench.file("sheet.pdf");
    actionNamed(bench.window, QStringLiteral("Wiring sheet as PDF…"))->trigger();
    auto* progress = awaited<QProgressDialog>(bench.window);
    CHECK(progress->windowModality() == Qt::NonModal);
    progress->findChild<QPushButton*>()->click();
    CHECK(QTest::qWaitFor([&] { return QFile::exists(bench.dialogs->path); }, 60000));
    CHECK(bench.dialogs->errors.isEmpty());
}

TEST_CASE("closing the window while a sheet is made does not wait for it", "[window][sheet]") {
    QElapsedTimer clock;
    {
        WindowBench bench;
        REQUIRE(bench.window.openSample(kSample));
        bench.waitForAnalysis();
        bench.dialogs->path = bench.file("sheet.pdf");
        actionNamed(bench.window, QStringLiteral("Wiring sheet as PDF…"))->trigger();
        QTest::qWait(50);
        clock.start();
    }
    CHECK(clock.elapsed() < 60000); // the breakdowns of a large circuit would take longer
}

TEST_CASE("texts of a file are no markup anywhere in the window, and its name is a name", "[window][nasty]") {
    WindowBench bench;
    auto circuit = readCircuit("samples/first-try.pumpwright");
    REQUIRE(circuit);
    for (auto& [id, part] : circuit->parts) {
        part.reference = "<b>&%s" + part.reference;
        part.label = "${HOME} ../ =cmd \u202E<i>";
    }
    const QString path = bench.file("<b>&%s${HOME}=cmd.pumpwright");
    REQUIRE(writeCircuit(*circuit, path.toStdString()));
    REQUIRE(bench.window.open(path));
    bench.waitForAnalysis();
    CHECK(bench.window.windowTitle().startsWith(QStringLiteral("<b>&%s${HOME}=cmd")));
    const PartId first = bench.window.document().circuit().parts.begin()->first;
    bench.window.selection().select({{first}, {}, {}});
    QTest::qWait(100);
    int plain = 0;
    for (const QLabel* label : bench.window.findChildren<QLabel*>()) {
        INFO(label->text().toStdString());
        if (label->text().contains(QStringLiteral("<b>"))) {
            CHECK(label->textFormat() == Qt::PlainText);
            ++plain;
        }
        CHECK_FALSE(label->text().contains(QChar(0x202E)));
    }
    CHECK(plain > 0);
}

TEST_CASE("comparing with a file shows what differs and what that does to the findings",
          "[window][compare]") {
    WindowBench bench;
    REQUIRE(bench.window.openSample(kSample));
    bench.waitForAnalysis();
    bench.dialogs->path = QStringLiteral("samples/first-try.pumpwright");
    actionNamed(bench.window, QStringLiteral("Compare with a file…"))->trigger();
    auto* shownWindow = awaited<ComparisonWindow>(bench.window);
    const auto tables = shownWindow->findChildren<QTableView*>();
    REQUIRE(tables.size() == 2);
    for (QTableView* table : tables) {
        const QAbstractItemModelTester tester(table->model(),
                                              QAbstractItemModelTester::FailureReportingMode::Fatal);
        CHECK(table->model()->rowCount() > 0);
        CHECK_FALSE(table->accessibleName().isEmpty());
    }
    shownWindow->close();
}

TEST_CASE("a circuit is the same as itself, and an unreadable file is told", "[window][compare]") {
    WindowBench bench;
    REQUIRE(bench.window.openSample(kSample));
    bench.waitForAnalysis();
    bench.dialogs->path = kSample;
    actionNamed(bench.window, QStringLiteral("Compare with a file…"))->trigger();
    auto* shownWindow = awaited<ComparisonWindow>(bench.window);
    for (const QTableView* table : shownWindow->findChildren<QTableView*>()) {
        for (int column = 0; column < table->model()->columnCount(); ++column) {
            UNSCOPED_INFO(table->model()->index(0, column).data().toString().toStdString());
        }
    }
    CHECK(shownWindow->findChildren<QTableView*>().isEmpty());
    bench.dialogs->path = bench.file("missing.pumpwright");
    actionNamed(bench.window, QStringLiteral("Compare with a file…"))->trigger();
    REQUIRE(bench.dialogs->errors.size() == 1);
    CHECK(bench.dialogs->errors.front().code == ErrorCode::FileUnreadable);
}

TEST_CASE("the handbook opens in the program, with all its chapters, figures and finding pages",
          "[window][handbook]") {
    HandbookWindow handbook(QString::fromStdString(docsFolder().string()));
    handbook.show();
    REQUIRE(QTest::qWaitForWindowExposed(&handbook));
    int pages = 0;
    int figures = 0;
    for (QTreeWidgetItemIterator item(&handbook.contents()); *item != nullptr; ++item) {
        handbook.contents().setCurrentItem(*item);
        const QString title = (*item)->text(0);
        INFO(title.toStdString());
        CHECK_FALSE(title.isEmpty());
        CHECK(handbook.page().toPlainText().size() > 200);
        ++pages;
        const QTextDocument& document = *handbook.page().document();
        for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
            for (auto part = block.begin(); !part.atEnd(); ++part) {
                if (part.fragment().charFormat().isImageFormat()) {
                    const QString name = part.fragment().charFormat().toImageFormat().name();
                    INFO(name.toStdString());
                    CHECK(handbook.page()
                              .loadResource(QTextDocument::ImageResource, QUrl(name))
                              .value<QImage>()
                              .width() > 100);
                    ++figures;
                }
            }
        }
    }
    CHECK(pages >= 7 + 38);
    CHECK(figures >= 6);
}

TEST_CASE("links of the handbook lead to pages that are there", "[window][handbook]") {
    const QDir docs(QString::fromStdString(docsFolder().string()));
    const QRegularExpression link(QStringLiteral("\\]\\(([^)#:]+)[^)]*\\)"));
    int links = 0;
    for (const QString& folder : {QStringLiteral("handbook"), QStringLiteral("checks")}) {
        const QDir pages(docs.filePath(folder));
        const QStringList names = pages.entryList({QStringLiteral("*.md")}, QDir::Files);
        for (const QString& name : names) {
            const QString text = QString::fromUtf8(bytesOf(pages.filePath(name)));
            for (auto match = link.globalMatch(text); match.hasNext();) {
                const QString target = match.next().captured(1);
                INFO(name.toStdString() << ": " << target.toStdString());
                CHECK(QFileInfo::exists(pages.filePath(target)));
                ++links;
            }
        }
    }
    CHECK(links > 10);
}

TEST_CASE("the handbook shows the page of every rule, with limit and remedies", "[window][handbook]") {
    HandbookWindow handbook(QString::fromStdString(docsFolder().string()));
    for (const Rule* rule : rules()) {
        INFO(rule->id);
        handbook.showPage(QStringLiteral("checks/%1.md").arg(shown(rule->id)));
        const QString text = handbook.page().toPlainText();
        CHECK(text.startsWith(shown(rule->title)));
        CHECK(text.contains(QStringLiteral("Limit")));
        CHECK(text.contains(QStringLiteral("Remedies")));
    }
}

TEST_CASE("a finding opens the page of its rule in the handbook", "[window][handbook]") {
    WindowBench bench;
    REQUIRE(bench.window.openSample(QStringLiteral("samples/first-try.pumpwright")));
    bench.waitForAnalysis();
    Q_EMIT bench.window.findChild<FindingsPanel*>()->pageChosen(QStringLiteral("relay-chatter"));
    auto* handbook = bench.window.findChild<HandbookWindow*>();
    REQUIRE(handbook);
    CHECK(handbook->isVisible());
    CHECK(handbook->page().source().fileName() == QStringLiteral("relay-chatter.md"));
}

TEST_CASE("a link of the handbook opens the page, none leads out of the program", "[window][handbook]") {
    HandbookWindow handbook(QString::fromStdString(docsFolder().string()));
    handbook.showPage(QStringLiteral("handbook/physics.md"));
    Q_EMIT handbook.page().anchorClicked(QUrl(QStringLiteral("../physics.md")));
    CHECK(handbook.page().source().fileName() == QStringLiteral("physics.md"));
    const QUrl before = handbook.page().source();
    Q_EMIT handbook.page().anchorClicked(QUrl(QStringLiteral("https://pumpwright.example/")));
    Q_EMIT handbook.page().anchorClicked(QUrl(QStringLiteral("../../../../etc/hostname")));
    CHECK(handbook.page().source() == before);
}
