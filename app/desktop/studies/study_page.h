#pragma once

#include "app/desktop/studies/study_run.h"

#include <QWidget>

class QHBoxLayout;
class QLabel;
class QProgressBar;
class QPushButton;
class QTableView;
class QVBoxLayout;

namespace pumpwright {

class Document;
class SheetTableModel;

/// One study of the circuit: a button that runs it, its progress, and its tables. It says when the circuit
/// has changed since.
class StudyPage final : public QWidget {
    Q_OBJECT

public:
    /// What to run on a copy of the circuit, made when the button is pressed. An empty one runs nothing: what
    /// is missing has been shown by showNote().
    using Start = std::function<StudyRun::Study(const Circuit&)>;

    /// `name` for what is run, as "Breakdowns"; `about` says in a sentence what the study is good for.
    StudyPage(Document& document, const QString& name, const QString& about, Start start,
              QWidget* parent = nullptr);
    ~StudyPage() override;

    void run();
    bool isRunning() const { return m_run.isRunning(); }
    void showNote(const QString& note);
    const std::vector<SheetTable>& tables() const { return m_tables; }
    /// Where further controls of this study go, beside its button.
    QHBoxLayout& controls() { return *m_controls; }
    /// Puts a further control on a line of its own, where the page is narrow.
    void addBelowControls(QWidget& control);

Q_SIGNALS:
    void tablesChanged();

private:
    struct TitledTable {
        QLabel* title;
        QTableView* view;
    };

    void build(const QString& about);
    void showRunning(bool running);
    void fillTables(const std::vector<SheetTable>& tables);
    void showResult(const std::vector<SheetTable>& tables, bool whole);
    TitledTable newTable();
    void noteChange();
    void showStale();

    Document& m_document;
    QString m_name;
    Start m_start;
    std::vector<SheetTable> m_tables;
    std::vector<TitledTable> m_views; ///< one for each table
    QPushButton* m_button;
    QPushButton* m_cancel;
    QProgressBar* m_progress;
    QLabel* m_note;
    QHBoxLayout* m_controls;
    QVBoxLayout* m_tableColumn;
    bool m_isStale = false;
    StudyRun m_run; ///< last, so that its thread ends first
};

} // namespace pumpwright
