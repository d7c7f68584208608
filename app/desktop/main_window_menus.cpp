#include "app/desktop/cautions_bar.h"
#include "app/desktop/chart/drive_chart.h"
#include "app/desktop/circuit/circuit_view.h"
#include "app/desktop/compare_actions.h"
#include "app/desktop/data_files.h"
#include "app/desktop/edit_actions.h"
#include "app/desktop/export_actions.h"
#include "app/desktop/file_actions.h"
#include "app/desktop/find_field.h"
#include "app/desktop/handbook_window.h"
#include "app/desktop/icons.h"
#include "app/desktop/main_window.h"
#include "app/desktop/panels/drive_plan_editor.h"
#include "app/desktop/panels/findings_panel.h"
#include "app/desktop/panels/hand_panel.h"
#include "app/desktop/panels/nameplate.h"
#include "app/desktop/panels/parts_drawer.h"
#include "app/desktop/preferences.h"
#include "app/desktop/preferences_window.h"
#include "app/desktop/sheet_actions.h"
#include "app/desktop/studies/studies_panel.h"

#include <QActionGroup>
#include <QApplication>
#include <QDockWidget>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QMenuBar>
#include <QStatusBar>
#include <QToolBar>
#include <QToolButton>

#include <array>

namespace pumpwright {

void MainWindow::buildFileMenu() {
    QMenu* menu = m_menus->addMenu(tr("&File"));
    menu->addAction(&m_files->newCircuit());
    m_files->fillTemplates(*menu->addMenu(tr("New from &template")));
    QAction* window = menu->addAction(tr("New &window"), this, &MainWindow::windowRequested);
    window->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N));
    menu->addAction(&m_files->openFile());
    m_files->fillSamples(*menu->addMenu(tr("Open sa&mple")));
    QMenu* recent = menu->addMenu(tr("Open &recent"));
    recent->setToolTipsVisible(true);
    m_files->fillRecent(*recent);
    menu->addSeparator();
    menu->addAction(&m_files->saveFile());
    menu->addAction(&m_files->saveFileAs());
    QMenu* write = menu->addMenu(tr("&Export"));
    write->addAction(&m_sheet->writePdf());
    write->addActions(m_exports->actions());
    menu->addAction(&m_compare->compare());
    menu->addSeparator();
    menu->addAction(&m_sheet->preview());
    menu->addAction(&m_sheet->print());
    menu->addSeparator();
    QAction* close = menu->addAction(tr("&Close the window"), this, &MainWindow::close);
    close->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_W));
    QAction* quit = menu->addAction(tr("&Quit"), this, [] { QApplication::closeAllWindows(); });
    quit->setShortcut(QKeySequence::Quit);
}

void MainWindow::buildEditMenus() {
    QMenu* edit = m_menus->addMenu(tr("&Edit"));
    m_edits->fillEditMenu(*edit);
    edit->addSeparator();
    QAction* find = edit->addAction(tr("&Find…"), this, [this] {
        m_find->field().setFocus(Qt::ShortcutFocusReason);
        m_find->field().selectAll();
    });
    find->setShortcut(QKeySequence::Find);
    edit->addSeparator();
    QAction* preferences = edit->addAction(tr("Pre&ferences…"), this, &MainWindow::showPreferences);
    preferences->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_Comma));
    QMenu* place = m_menus->addMenu(tr("&Place"));
    QAction* part = place->addAction(ownIcon(QStringLiteral("parts")), tr("&Part…"), this, [this] {
        showPanel(*m_panels.at(0), m_parts->search());
        m_parts->search().selectAll();
    });
    part->setShortcut(QKeySequence(Qt::Key_P));
    m_edits->fillPlaceMenu(*place);
}

void MainWindow::buildViewMenu() {
    QMenu* menu = m_menus->addMenu(tr("&View"));
    m_edits->fillZoomMenu(*menu);
    menu->addSeparator();
    QAction* circuit = menu->addAction(tr("Go to the &Circuit"), m_view,
                                       [this] { m_view->setFocus(Qt::ShortcutFocusReason); });
    circuit->setShortcut(QKeySequence(Qt::Key_F6));
    const QList<QWidget*> contents{&m_parts->search(), m_nameplate, m_findings, m_plan, m_chart,
                                   m_studies,          m_byHand};
    for (qsizetype i = 0; i < m_panels.size(); ++i) {
        QDockWidget* panel = m_panels.at(i);
        QWidget* content = contents.at(i);
        QAction* go =
            menu->addAction(tr("Go to: %1").arg(panel->windowTitle()), this, [this, panel, content] {
                showPanel(*panel, *content);
                if (!content->hasFocus()) {
                    content->nextInFocusChain()->setFocus(Qt::ShortcutFocusReason);
                }
            });
        go->setShortcut(QKeySequence(QKeyCombination(Qt::CTRL, Qt::Key(Qt::Key_1 + i))));
    }
    QMenu* shownPanels = menu->addMenu(tr("&Panels"));
    for (const QDockWidget* panel : std::as_const(m_panels)) {
        shownPanels->addAction(panel->toggleViewAction());
    }
}

void MainWindow::showPreferences() {
    if (m_preferencesWindow == nullptr) {
        m_preferencesWindow = new PreferencesWindow(m_preferences, this);
    }
    m_preferencesWindow->show();
    m_preferencesWindow->raise();
    m_preferencesWindow->activateWindow();
}

void MainWindow::buildDriveMenu() {
    QMenu* menu = m_menus->addMenu(tr("&Drive"));
    m_chart->fillMenu(*menu);
    menu->addSeparator();
    QAction* byHand = menu->addAction(ownIcon(QStringLiteral("hand")), tr("Try by &hand"));
    byHand->setObjectName(QStringLiteral("tryByHand"));
    byHand->setCheckable(true);
    byHand->setShortcut(QKeySequence(Qt::Key_F9));
    byHand->setIconText(tr("By hand"));
    const QString tip = tr("Run the circuit in real time and operate switches and pedal");
    byHand->setToolTip(tr("%1 (%2)").arg(tip, byHand->shortcut().toString(QKeySequence::NativeText)));
    byHand->setStatusTip(tip);
    connect(byHand, &QAction::triggered, this, &MainWindow::operateByHand);
    connect(&m_hand, &HandOperation::onChanged, byHand, &QAction::setChecked);
}

void MainWindow::operateByHand(bool on) {
    if (on) {
        m_panels.at(6)->show();
        m_panels.at(6)->raise();
        m_view->operateByHand();
    } else {
        m_view->cancel();
    }
}

void MainWindow::showHandbook() {
    if (m_handbook == nullptr) {
        m_handbook = new HandbookWindow(QString::fromStdString(docsFolder().string()), this);
    }
    m_handbook->show();
    m_handbook->raise();
    m_handbook->activateWindow();
}

/// Headings of the handbook are not translated, so the page is opened by its place in the list of panels.
void MainWindow::showHelpOn(const QString& panel) {
    constexpr std::array kHeadings{"Parts drawer", "Nameplate", "Findings", "Drive plan",
                                   "Drive chart",  "Studies",   "By hand"};
    QString heading = QStringLiteral("Circuit");
    for (qsizetype i = 0; i < m_panels.size(); ++i) {
        if (m_panels.at(i)->windowTitle() == panel) {
            heading = QString::fromLatin1(kHeadings.at(static_cast<std::size_t>(i)));
        }
    }
    showHandbook();
    m_handbook->showSection(QStringLiteral("handbook/panels.md"), heading);
}

void MainWindow::showHelpHere() {
    const QWidget* const focus = focusWidget();
    for (const QDockWidget* panel : std::as_const(m_panels)) {
        if (focus != nullptr && panel->isAncestorOf(focus)) {
            showHelpOn(panel->windowTitle());
            return;
        }
    }
    showHelpOn({}); // the canvas
}

void MainWindow::buildHelpMenu() {
    QMenu* menu = m_menus->addMenu(tr("&Help"));
    menu->addAction(tr("&Handbook"), this, &MainWindow::showHandbook);
    QAction* here = menu->addAction(tr("Help on &this panel"), this, &MainWindow::showHelpHere);
    here->setShortcut(QKeySequence::HelpContents);
    menu->addAction(tr("&Cautions"), this, [this] {
        m_cautions->show();
        m_cautions->setFocus(Qt::OtherFocusReason);
    });
}

void MainWindow::buildToolBar() {
    QToolBar* bar = addToolBar(tr("Tools"));
    bar->setObjectName(QStringLiteral("tools"));
    bar->setAccessibleName(tr("Tools"));
    bar->setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
    bar->setIconSize({22, 22});
    bar->setMovable(false);
    m_files->newCircuit().setIconText(tr("New"));
    m_files->openFile().setIconText(tr("Open"));
    m_files->saveFile().setIconText(tr("Save"));
    bar->addActions({&m_files->newCircuit(), &m_files->openFile(), &m_files->saveFile()});
    bar->addSeparator();
    m_edits->fillToolBar(*bar);
    bar->addSeparator();
    bar->addAction(findChild<QAction*>(QStringLiteral("tryByHand")));
    bar->addAction(&m_sheet->preview());
    auto* space = new QWidget(bar);
    space->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    bar->addWidget(space);
    bar->addWidget(m_find);
}

void MainWindow::buildStatusBar() {
    auto* hint = new QLabel(this);
    hint->setTextFormat(Qt::PlainText);
    hint->setAccessibleName(tr("What to do next"));
    auto* running = new QLabel(this);
    running->setTextFormat(Qt::PlainText);
    running->setAccessibleName(tr("State of the simulation"));
    auto* findings = new QToolButton(this);
    findings->setAutoRaise(true);
    findings->setToolTip(tr("Show the findings"));
    auto* zoom = new QLabel(this);
    zoom->setAccessibleName(tr("Zoom"));
    statusBar()->addWidget(hint, 1);
    statusBar()->addPermanentWidget(running);
    statusBar()->addPermanentWidget(findings);
    statusBar()->addPermanentWidget(zoom);

    connect(m_view, &CircuitView::hint, hint, &QLabel::setText);
    const auto showZoom = [zoom](double factor) { zoom->setText(tr("%1 %").arg(qRound(100 * factor))); };
    connect(m_view, &CircuitView::zoomChanged, zoom, showZoom);
    showZoom(m_view->zoom());
    const auto showState = [this, running, findings] {
        running->setText(m_analysis.isRunning() ? tr("Simulating…") : QString());
        findings->setText(m_findings->summary());
    };
    connect(&m_analysis, &Analysis::runningChanged, running, showState);
    connect(&m_analysis, &Analysis::findingsChanged, running, showState);
    showState();
    connect(findings, &QToolButton::clicked, this,
            [this] { showPanel(*m_panels.at(2), m_findings->list()); });
}

} // namespace pumpwright
