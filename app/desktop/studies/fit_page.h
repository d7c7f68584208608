#pragma once

#include "core/study/fit.h"

#include <QWidget>

#include <memory>

class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;
class QTableView;

namespace pumpwright {

class Dialogs;
class Document;
class LogColumnsModel;
class StudyPage;

/// A bench log: what its columns are, laid over the drive chart, and values of the circuit that are fitted to
/// it.
class FitPage final : public QWidget {
    Q_OBJECT

public:
    FitPage(Document& document, Dialogs& dialogs, QWidget* parent = nullptr);

    void openLog();
    LogColumnsModel& columns() { return *m_columns; }
    QLineEdit& offset() { return *m_offset; }
    /// Ticks a value to be fitted, "A1.leakHole_m", or takes the tick away.
    void tick(const std::string& valueName, bool on);
    StudyPage& study() { return *m_study; }
    QPushButton& takeButton() { return *m_take; }

Q_SIGNALS:
    /// What the log holds as its columns are chosen now; nothing in it where they make no sense.
    void logRead(const pumpwright::BenchLog& log);

private:
    void build();
    QWidget* buildLog();
    QWidget* buildValues();
    void fillValues();
    void filterValues(const QString& text);
    std::vector<Adjustable> tickedValues() const;
    Result<BenchLog> log() const;
    void readLog();
    void showResult();
    void takeValues();

    Document& m_document;
    Dialogs& m_dialogs;
    LogColumnsModel* m_columns;
    QTableView* m_columnsView;
    QPushButton* m_open;
    QLabel* m_file;
    QLabel* m_message;
    QLineEdit* m_offset;
    QLineEdit* m_filter;
    QListWidget* m_values;
    QPushButton* m_take;
    QLabel* m_warnings;
    std::shared_ptr<FitResult> m_found; ///< of the run that was begun last
    StudyPage* m_study;
};

} // namespace pumpwright
