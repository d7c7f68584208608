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
#include "app/desktop/panels/nameplate.h"
#include "app/desktop/panels/parts_drawer.h"
#include "app/desktop/preferences.h"
#include "app/desktop/sheet_actions.h"
#include "app/desktop/studies/studies_panel.h"

#include <QActionGroup>
#include <QDockWidget>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QMenuBar>
#include <QStatusBar>
#include <QToolBar>
#include <QToolButton>

namespace pumpwright {

void MainWindow::buildFileMenu() {
    QMenu* menu = m_menus->addMenu(tr("&File"));
    menu->addAction(&m_files->newCircuit());
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
    QAction* quit = menu->addAction(tr("&Quit"), this, &MainWindow::close);
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
    const QList<QWidget*> contents{&m_parts->search(), m_nameplate, m_findings, m_plan, m_chart, m_studies};
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
    menu->addSeparator();
    QAction* inches = menu->addAction(tr("Vacuum in &inHg first"));
    inches->setCheckable(true);
    inches->setChecked(m_preferences.inchesOfMercuryFirst());
    connect(inches, &QAction::toggled, &m_preferences, &Preferences::setInchesOfMercuryFirst);
    QAction* still = menu->addAction(tr("Less &motion"));
    still->setCheckable(true);
    still->setChecked(m_preferences.lessMotion());
    still->setStatusTip(tr("Playing goes from event to event instead of running"));
    connect(still, &QAction::toggled, &m_preferences, &Preferences::setLessMotion);
}

void MainWindow::buildDriveMenu() {
    m_chart->fillMenu(*m_menus->addMenu(tr("&Drive")));
}

void MainWindow::showHandbook() {
    if (m_handbook == nullptr) {
        m_handbook = new HandbookWindow(QString::fromStdString(docsFolder().string()), this);
    }
    m_handbook->show();
    m_handbook->raise();
    m_handbook->activateWindow();
}

void MainWindow::buildHelpMenu() {
    QMenu* menu = m_menus->addMenu(tr("&Help"));
    QAction* handbook = menu->addAction(tr("&Handbook"), this, &MainWindow::showHandbook);
    handbook->setShortcut(QKeySequence::HelpContents);
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
