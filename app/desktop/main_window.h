#pragma once

#include "app/desktop/document/analysis.h"
#include "app/desktop/document/document.h"
#include "app/desktop/document/hand_operation.h"
#include "app/desktop/document/selection.h"
#include "app/desktop/document/snapshots.h"
#include "core/files/catalogue.h"

#include <QDockWidget>
#include <QMainWindow>

#include <memory>

namespace pumpwright {

class CautionsBar;
class CircuitView;
class CompareActions;
class Dialogs;
class ErrorBar;
class DriveChart;
class DrivePlanEditor;
class EditActions;
class ExportActions;
class FileActions;
class FindField;
class FindingsPanel;
class HandPanel;
class HandbookWindow;
class Nameplate;
class PartsDrawer;
class Preferences;
class PreferencesWindow;
class SheetActions;
class StudiesPanel;
class Toast;

/// The window: the Circuit in its middle, what is put in on the left, what is found out on the right and
/// below. It only assembles; each action and each panel has a file of its own.
class MainWindow final : public QMainWindow {
    Q_OBJECT

public:
    /// `dialogs` asks and complains; by default on the screen.
    MainWindow(const Catalogue& catalogue, Preferences& preferences,
               std::unique_ptr<Dialogs> dialogs = nullptr);
    ~MainWindow() override;

    /// Opens a file; on failure says why and keeps the circuit that is open.
    bool open(const QString& path);
    bool openSample(const QString& path);

    Document& document() { return m_document; }
    Selection& selection() { return m_selection; }
    Analysis& analysis() { return m_analysis; }
    HandOperation& handOperation() { return m_hand; }
    CircuitView& circuitView() { return *m_view; }
    FileActions& files() { return *m_files; }
    Dialogs& dialogs() { return *m_dialogs; }

    QSize sizeHint() const override;

Q_SIGNALS:
    /// The user wants another window beside this one.
    void windowRequested();

protected:
    void closeEvent(QCloseEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void buildCentre();
    void buildHead();
    void buildPanels(const Catalogue& catalogue);
    QDockWidget* addPanel(const QString& title, const QString& name, QWidget* content,
                          Qt::DockWidgetArea area);
    void buildFileMenu();
    void buildEditMenus();
    void buildViewMenu();
    void buildDriveMenu();
    void operateByHand(bool on);
    void buildHelpMenu();
    void showHandbook();
    /// The handbook's words on a panel, or on the one that has the focus.
    void showHelpOn(const QString& panel);
    void showHelpHere();
    void showPreferences();
    void followPreferences();
    void buildToolBar();
    void buildStatusBar();
    void connectParts();
    void restoreLayout();
    void giveFirstSizes();
    bool foldPanels();
    void updateTitle();
    void showPanel(QDockWidget& panel, QWidget& content);

    Preferences& m_preferences;
    ErrorBar* m_errors;
    std::unique_ptr<Dialogs> m_dialogs;
    Document m_document;
    Selection m_selection;
    Analysis m_analysis{m_document};
    HandOperation m_hand{m_document};
    Snapshots m_snapshots;
    CircuitView* m_view = nullptr;
    QMenuBar* m_menus = nullptr;
    CautionsBar* m_cautions = nullptr;
    PartsDrawer* m_parts = nullptr;
    Nameplate* m_nameplate = nullptr;
    FindingsPanel* m_findings = nullptr;
    DrivePlanEditor* m_plan = nullptr;
    DriveChart* m_chart = nullptr;
    StudiesPanel* m_studies = nullptr;
    HandPanel* m_byHand = nullptr;
    FindField* m_find = nullptr;
    FileActions* m_files = nullptr;
    EditActions* m_edits = nullptr;
    SheetActions* m_sheet = nullptr;
    ExportActions* m_exports = nullptr;
    CompareActions* m_compare = nullptr;
    HandbookWindow* m_handbook = nullptr;             ///< once it was asked for
    PreferencesWindow* m_preferencesWindow = nullptr; ///< likewise
    Toast* m_toast = nullptr;
    /// Parts drawer, Nameplate, Findings, Drive plan, Drive chart, Studies, By hand.
    QList<QDockWidget*> m_panels;
    bool m_wasShown = false;
};

} // namespace pumpwright
