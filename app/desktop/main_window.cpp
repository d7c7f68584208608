#include "app/desktop/main_window.h"

#include "app/desktop/cautions_bar.h"
#include "app/desktop/chart/drive_chart.h"
#include "app/desktop/circuit/circuit_view.h"
#include "app/desktop/compare_actions.h"
#include "app/desktop/dialogs.h"
#include "app/desktop/edit_actions.h"
#include "app/desktop/error_bar.h"
#include "app/desktop/export_actions.h"
#include "app/desktop/file_actions.h"
#include "app/desktop/find_field.h"
#include "app/desktop/handbook_window.h"
#include "app/desktop/kept_fit.h"
#include "app/desktop/lost_work_bar.h"
#include "app/desktop/panel_title.h"
#include "app/desktop/panels/drive_plan_editor.h"
#include "app/desktop/panels/findings_panel.h"
#include "app/desktop/panels/hand_panel.h"
#include "app/desktop/panels/nameplate.h"
#include "app/desktop/panels/parts_drawer.h"
#include "app/desktop/panels/plan_maker.h"
#include "app/desktop/preferences.h"
#include "app/desktop/sheet_actions.h"
#include "app/desktop/studies/fit_page.h"
#include "app/desktop/studies/studies_panel.h"
#include "app/desktop/studies/trials_page.h"
#include "app/desktop/toast.h"
#include "app/desktop/twice_open_bar.h"

#include <QCloseEvent>
#include <QDockWidget>
#include <QMenuBar>
#include <QStatusBar>
#include <QTimer>
#include <QVBoxLayout>

namespace pumpwright {
namespace {

// In average letter widths, so that it fits whatever the font is.
constexpr int kLeftWidth_letters = 46;
constexpr int kRightWidth_letters = 50;
constexpr int kChartHeight_lines = 22;
constexpr int kLeastWidthForPanels = 800;
constexpr int kLeastHeightForPanels = 500;

} // namespace

MainWindow::MainWindow(const Catalogue& catalogue, Preferences& preferences, std::unique_ptr<Dialogs> dialogs)
    : m_preferences(preferences), m_errors(new ErrorBar(this)),
      m_dialogs(dialogs ? std::move(dialogs) : std::make_unique<ScreenDialogs>(*this, *m_errors)),
      m_snapshots(m_document, preferences.unsavedFolder()) {
    m_document.startNew(preferences.newCircuit());
    buildCentre();
    m_files = new FileActions(m_document, m_preferences, *m_dialogs, this);
    buildHead();
    m_view->setCatalogue(catalogue);
    m_find = new FindField(m_document, m_selection, this);
    m_edits = new EditActions(m_document, m_selection, *m_view, this);
    m_sheet = new SheetActions(m_document, m_analysis, *m_dialogs, *this);
    m_sheet->setPrices(priceListOf(catalogue));
    m_exports = new ExportActions(m_document, m_analysis, *m_dialogs, this);
    m_exports->setPrices(priceListOf(catalogue));
    m_compare = new CompareActions(m_document, m_analysis, *m_dialogs, *this);
    buildPanels(catalogue);
    buildFileMenu();
    buildEditMenus();
    buildViewMenu();
    buildDriveMenu();
    buildHelpMenu();
    buildToolBar();
    buildStatusBar();
    connectParts();
    followPreferences();
    restoreLayout();
    updateTitle();
}

MainWindow::~MainWindow() = default;

QSize MainWindow::sizeHint() const {
    return {1280, 800};
}

void MainWindow::buildCentre() {
    m_view = new CircuitView(m_document, m_selection, m_analysis, this);
    m_view->setHandOperation(m_hand);
    m_view->setMinimumSize(160, 120);
    m_view->viewport()->setAccessibleName(tr("Drawing of the circuit"));
    setCentralWidget(m_view);
    new KeptFit(*m_view, m_document, this);
    m_toast = new Toast(*m_view);
}

/// The menus and, below them over the whole width, the cautions and what was left unsaved.
void MainWindow::buildHead() {
    auto* head = new QWidget(this);
    m_menus = new QMenuBar(head);
    m_cautions = new CautionsBar(head);
    m_cautions->setVisible(!m_preferences.cautionsUnderstood());
    auto* column = new QVBoxLayout(head);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_menus);
    column->addWidget(m_errors);
    column->addWidget(m_cautions);
    column->addWidget(new LostWorkBar(m_document, *m_files, *m_dialogs, m_preferences.unsavedFolder(), head));
    column->addWidget(new TwiceOpenBar(m_document, m_preferences.claimsFolder(), head));
    setMenuWidget(head);
    connect(m_cautions, &CautionsBar::understood, this, [this] {
        m_preferences.setCautionsUnderstood();
        m_cautions->hide();
        m_view->setFocus(Qt::OtherFocusReason);
    });
}

QDockWidget* MainWindow::addPanel(const QString& title, const QString& name, QWidget* content,
                                  Qt::DockWidgetArea area) {
    auto* panel = new QDockWidget(title, this);
    panel->setObjectName(name); // stored in the settings: do not rename
    panel->setAccessibleName(title);
    panel->setWidget(content);
    auto* head = new PanelTitle(*panel);
    panel->setTitleBarWidget(head);
    connect(head, &PanelTitle::helpRequested, this, [this, title] { showHelpOn(title); });
    addDockWidget(area, panel);
    m_panels << panel;
    return panel;
}

void MainWindow::buildPanels(const Catalogue& catalogue) {
    setDockOptions(AnimatedDocks | AllowTabbedDocks | AllowNestedDocks);
    // Left: what is put in. Right: what comes out, with the plan that leads to it. Below: the drive over
    // time.
    setCorner(Qt::BottomLeftCorner, Qt::LeftDockWidgetArea);
    setCorner(Qt::BottomRightCorner, Qt::RightDockWidgetArea);
    setTabPosition(Qt::RightDockWidgetArea, QTabWidget::North);
    setTabPosition(Qt::BottomDockWidgetArea, QTabWidget::North);
    m_parts = new PartsDrawer(catalogue, this);
    m_nameplate = new Nameplate(m_document, m_selection, m_preferences, this);
    m_findings = new FindingsPanel(m_document, m_selection, m_analysis, m_preferences, this);
    m_plan = new DrivePlanEditor(m_document, m_preferences, this);
    m_plan->addAtTop(new PlanMaker(m_document, *m_dialogs, m_plan));
    m_chart = new DriveChart(m_document, m_selection, m_analysis, m_preferences, this);
    addPanel(tr("Parts drawer"), QStringLiteral("partsDrawer"), m_parts, Qt::LeftDockWidgetArea);
    addPanel(tr("Nameplate"), QStringLiteral("nameplate"), m_nameplate, Qt::LeftDockWidgetArea);
    QDockWidget* findings =
        addPanel(tr("Findings"), QStringLiteral("findings"), m_findings, Qt::RightDockWidgetArea);
    QDockWidget* plan =
        addPanel(tr("Drive plan"), QStringLiteral("drivePlan"), m_plan, Qt::RightDockWidgetArea);
    QDockWidget* chart =
        addPanel(tr("Drive chart"), QStringLiteral("driveChart"), m_chart, Qt::BottomDockWidgetArea);
    m_studies = new StudiesPanel(m_document, priceListOf(catalogue), *m_dialogs, this);
    QDockWidget* studies =
        addPanel(tr("Studies"), QStringLiteral("studies"), m_studies, Qt::BottomDockWidgetArea);
    tabifyDockWidget(chart, studies);
    chart->raise();
    m_byHand = new HandPanel(m_document, m_analysis, m_hand, m_preferences, this);
    QDockWidget* byHand =
        addPanel(tr("By hand"), QStringLiteral("byHand"), m_byHand, Qt::RightDockWidgetArea);
    tabifyDockWidget(findings, plan);
    tabifyDockWidget(plan, byHand);
    findings->raise();
}

void MainWindow::connectParts() {
    connect(m_parts, &PartsDrawer::placeRequested, m_view, [this](const Part& prototype) {
        m_view->place(prototype);
        m_view->setFocus(Qt::OtherFocusReason);
    });
    connect(m_parts, &PartsDrawer::placeWhereFreeRequested, m_view, &CircuitView::placeWhereFree);
    connect(m_view, &CircuitView::nameplateRequested, this, [this] {
        showPanel(*m_panels.at(1), *m_nameplate);
        m_nameplate->beginEditing();
    });
    connect(m_byHand, &HandPanel::requested, this, &MainWindow::operateByHand);
    connect(m_view, &CircuitView::fileRequested, m_files, &FileActions::askAndOpen);
    connect(m_view, &CircuitView::sampleRequested, this, [this] {
        if (const QStringList samples = samplePaths(); !samples.isEmpty()) {
            m_files->askAndOpenSample(samples.front());
        }
    });
    const auto show = [this](const QString& text) { m_toast->say(text); };
    connect(m_files, &FileActions::message, this, show);
    connect(&m_preferences, &Preferences::changed, this, &MainWindow::followPreferences);
    connect(m_sheet, &SheetActions::message, this, show);
    connect(m_exports, &ExportActions::message, this, show);
    connect(m_compare, &CompareActions::message, this, show);
    connect(m_findings, &FindingsPanel::pageChosen, this, [this](const QString& rule) {
        showHandbook();
        m_handbook->showPage(QStringLiteral("checks/%1.md").arg(rule));
    });
    connect(&m_studies->fit(), &FitPage::logRead, m_chart, &DriveChart::showLog);
    connect(&m_studies->trials(), &TrialsPage::tracesShown, m_chart, &DriveChart::showTrials);
    connect(&m_document, &Document::fileChanged, this, &MainWindow::updateTitle);
}

void MainWindow::followPreferences() {
    m_view->setNewWire(m_preferences.newWire());
    m_view->setWheelScrolls(m_preferences.wheelScrolls());
    const QString paper = m_preferences.paper();
    m_sheet->setPaper(paper == QLatin1String("A3")       ? SheetSize::A3
                      : paper == QLatin1String("Letter") ? SheetSize::Letter
                                                         : SheetSize::A4);
}

void MainWindow::showPanel(QDockWidget& panel, QWidget& content) {
    panel.show();
    panel.raise();
    content.setFocus(Qt::OtherFocusReason);
}

bool MainWindow::open(const QString& path) {
    return m_files->open(path);
}

bool MainWindow::openSample(const QString& path) {
    return m_files->openSample(path);
}

void MainWindow::updateTitle() {
    setWindowTitle(tr("%1[*] – Pumpwright").arg(m_files->documentName()));
    setWindowModified(m_document.isModified());
    setWindowFilePath(m_document.path());
}

void MainWindow::restoreLayout() {
    resize(sizeHint());
    restoreGeometry(m_preferences.windowGeometry());
    restoreState(m_preferences.windowState());
}

void MainWindow::showEvent(QShowEvent* event) {
    QMainWindow::showEvent(event);
    if (!m_wasShown) {
        m_wasShown = true;
        // Only a window that is on the screen takes sizes of its panels.
        QTimer::singleShot(0, this, [this] {
            if (m_preferences.windowState().isEmpty()) {
                giveFirstSizes();
            }
        });
    }
}

/// On a small screen the canvas comes first; the panels are a key away.
bool MainWindow::foldPanels() {
    if (width() >= kLeastWidthForPanels && height() >= kLeastHeightForPanels) {
        return false;
    }
    tabifyDockWidget(m_panels.at(0), m_panels.at(1));
    for (QDockWidget* panel : std::as_const(m_panels)) {
        panel->hide();
    }
    return true;
}

void MainWindow::giveFirstSizes() {
    if (foldPanels()) {
        return;
    }
    const int letter = fontMetrics().averageCharWidth();
    // Never so wide that the canvas is left with less than half.
    const int left = std::min(kLeftWidth_letters * letter, width() / 4);
    const int right = std::min(kRightWidth_letters * letter, width() / 4);
    resizeDocks({m_panels.at(0), m_panels.at(2)}, {left, right}, Qt::Horizontal);
    resizeDocks({m_panels.at(0), m_panels.at(1)}, {45, 55}, Qt::Vertical);
    const int chart = std::min(kChartHeight_lines * fontMetrics().lineSpacing(), height() * 36 / 100);
    resizeDocks({m_panels.at(4)}, {chart}, Qt::Vertical);
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (!m_files->mayLeave()) {
        event->ignore();
        return;
    }
    m_preferences.keepWindow(saveGeometry(), saveState());
    event->accept();
}

} // namespace pumpwright
