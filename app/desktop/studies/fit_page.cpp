#include "app/desktop/studies/fit_page.h"

#include "app/desktop/dialogs.h"
#include "app/desktop/document/document.h"
#include "app/desktop/panels/plan_cell_delegate.h"
#include "app/desktop/panels/quantity_text.h"
#include "app/desktop/panels/table_names.h"
#include "app/desktop/shown_text.h"
#include "app/desktop/studies/log_columns_model.h"
#include "app/desktop/studies/study_page.h"
#include "core/parts/document_fields.h"
#include "core/sheet/fit_tables.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTableView>

#include <algorithm>

namespace pumpwright {
namespace {

QLabel* newText(QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

} // namespace

FitPage::FitPage(Document& document, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent), m_document(document), m_dialogs(dialogs), m_columns(new LogColumnsModel(this)),
      m_columnsView(new QTableView(this)), m_open(new QPushButton(tr("Open a log…"), this)),
      m_file(newText(this)), m_message(newText(this)), m_offset(new QLineEdit(QStringLiteral("0 s"), this)),
      m_filter(new QLineEdit(this)), m_values(new QListWidget(this)),
      m_take(new QPushButton(tr("Take the fitted values"), this)), m_warnings(newText(this)),
      m_study(new StudyPage(
          document, tr("Fit"),
          tr("Sets the ticked values so that the drive comes as near as it can to the log."),
          [this](const Circuit& circuit) -> StudyRun::Study {
              const Result<BenchLog> read = log();
              const std::vector<Adjustable> what = tickedValues();
              if (!read || what.empty()) {
                  m_study->showNote(read ? tr("Tick the values to fit.") : shown(read.error().text));
                  return {};
              }
              m_warnings->clear();
              m_take->setEnabled(false);
              m_found = std::make_shared<FitResult>();
              return [circuit, log = *read, what, found = m_found](
                         const StudyOptions& options, const StudyRun::Show&) -> std::vector<SheetTable> {
                  *found = runFit(circuit, log, what, options);
                  return found->status == FitResult::Status::Useless ? std::vector<SheetTable>()
                                                                     : fitTables(*found);
              };
          },
          this)) {
    build();
    connect(m_open, &QPushButton::clicked, this, &FitPage::openLog);
    connect(m_columns, &LogColumnsModel::readingChanged, this, &FitPage::readLog);
    connect(m_offset, &QLineEdit::editingFinished, this, &FitPage::readLog);
    connect(m_filter, &QLineEdit::textChanged, this, &FitPage::filterValues);
    connect(m_take, &QPushButton::clicked, this, &FitPage::takeValues);
    connect(m_study, &StudyPage::tablesChanged, this, &FitPage::showResult);
    connect(&document, &Document::changed, this, [this](const ChangedObjects& changed) {
        if (changed.all || !changed.parts.empty() || !changed.wires.empty() || !changed.hoses.empty()) {
            fillValues();
        }
    });
    fillValues();
}

void FitPage::build() {
    m_take->setEnabled(false);
    m_take->setToolTip(tr("Set the values in the circuit, as one step"));
    m_study->addBelowControls(*m_take);
    auto* right = new QVBoxLayout;
    right->setContentsMargins(0, 0, 0, 4);
    right->addWidget(m_study, 1);
    right->addWidget(m_warnings);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(8, 8, 0, 0);
    row->addWidget(buildLog(), 3);
    row->addWidget(buildValues(), 2);
    row->addLayout(right, 4);
}

QWidget* FitPage::buildLog() {
    m_columnsView->setModel(m_columns);
    m_columnsView->setItemDelegate(new PlanCellDelegate(m_columnsView));
    m_columnsView->setAccessibleName(tr("Columns of the log"));
    m_columnsView->verticalHeader()->hide();
    m_columnsView->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 10);
    m_columnsView->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_columnsView->setEditTriggers(QAbstractItemView::AllEditTriggers);
    m_columnsView->setTabKeyNavigation(false);
    m_columnsView->setCornerButtonEnabled(false);
    nameHeaders(*m_columnsView);
    m_file->setText(tr("Measured vacuum, voltage or current over time, as CSV."));
    m_offset->setAccessibleName(tr("Time offset"));
    auto* offset = new QLabel(tr("Add to its times"), this);
    offset->setBuddy(m_offset);

    auto* head = new QHBoxLayout;
    head->addWidget(m_open);
    head->addWidget(offset);
    head->addWidget(m_offset, 1);
    auto* box = new QWidget(this);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 4);
    column->addWidget(m_file);
    column->addLayout(head);
    column->addWidget(m_columnsView, 1);
    column->addWidget(m_message);
    m_message->hide();
    return box;
}

QWidget* FitPage::buildValues() {
    m_filter->setPlaceholderText(tr("Find a value"));
    m_filter->setAccessibleName(tr("Find a value to fit"));
    m_filter->setClearButtonEnabled(true);
    m_values->setAccessibleName(tr("Values to fit"));
    auto* box = new QWidget(this);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 4);
    column->addWidget(m_filter);
    column->addWidget(m_values, 1);
    return box;
}

/// The ticks stay.
void FitPage::fillValues() {
    const std::vector<Adjustable> ticked = tickedValues();
    m_values->clear();
    for (const Adjustable& one : adjustables(m_document.circuit())) {
        auto* item = new QListWidgetItem(shown(one.label), m_values);
        item->setData(Qt::UserRole, editable(one.name));
        const bool isTicked = std::ranges::find(ticked, one.name, &Adjustable::name) != ticked.end();
        item->setCheckState(isTicked ? Qt::Checked : Qt::Unchecked);
    }
    filterValues(m_filter->text());
}

void FitPage::filterValues(const QString& text) {
    for (int i = 0; i < m_values->count(); ++i) {
        QListWidgetItem* item = m_values->item(i);
        item->setHidden(!item->text().contains(text, Qt::CaseInsensitive));
    }
}

void FitPage::tick(const std::string& valueName, bool on) {
    for (int i = 0; i < m_values->count(); ++i) {
        QListWidgetItem* item = m_values->item(i);
        if (item->data(Qt::UserRole).toString() == editable(valueName)) {
            item->setCheckState(on ? Qt::Checked : Qt::Unchecked);
        }
    }
}

std::vector<Adjustable> FitPage::tickedValues() const {
    std::vector<Adjustable> ticked;
    for (int i = 0; i < m_values->count(); ++i) {
        const QListWidgetItem* item = m_values->item(i);
        const Result<Adjustable> found =
            findAdjustable(m_document.circuit(), item->data(Qt::UserRole).toString().toStdString());
        if (item->checkState() == Qt::Checked && found) {
            ticked.push_back(*found);
        }
    }
    return ticked;
}

void FitPage::openLog() {
    const QString path =
        m_dialogs.pathToOpen({tr("Open a bench log"), tr("Tables (*.csv *.txt *.tsv)"), {}, {}});
    if (path.isEmpty()) {
        return;
    }
    Result<CsvNumbers> table = readCsvNumbers(path.toStdString());
    if (!table) {
        m_dialogs.showError(tr("The log cannot be read."), table.error());
        return;
    }
    m_file->setText((QFileInfo(path).fileName() + QLatin1Char(' ') + shown(thinningNote(*table))).trimmed());
    const LogReading reading = guessedReading(m_document.circuit(), *table);
    m_columns->setLog(std::move(*table), reading, logTargets(m_document.circuit()));
}

Result<BenchLog> FitPage::log() const {
    if (m_columns->rowCount() == 0) {
        return tl::unexpected(Error{ErrorCode::MissingKey, tr("Open a log first.").toStdString(), {}});
    }
    LogReading reading = m_columns->reading();
    const Result<double> offset_s = quantityWithin(
        m_offset->text(), {QuantityKind::Time, -field::kLongestDrive_s, field::kLongestDrive_s}, {});
    if (!offset_s) {
        return tl::unexpected(offset_s.error());
    }
    reading.timeOffset_s = *offset_s;
    return benchLog(m_document.circuit(), m_columns->table(), reading);
}

void FitPage::readLog() {
    if (m_columns->rowCount() == 0) {
        return;
    }
    const Result<BenchLog> read = log();
    m_message->setText(read ? QString() : shown(read.error().text));
    m_message->setVisible(!read);
    Q_EMIT logRead(read ? *read : BenchLog{});
}

void FitPage::showResult() {
    if (!m_found) {
        return;
    }
    if (m_found->status == FitResult::Status::Useless) {
        m_study->showNote(shown(m_found->message));
    }
    QStringList warnings;
    for (const Text& warning : fitWarnings(*m_found)) {
        warnings << translated(warning);
    }
    m_warnings->setText(warnings.join(QLatin1Char('\n')));
    m_take->setEnabled(m_found->status == FitResult::Status::Finished ||
                       m_found->status == FitResult::Status::NotSettled);
}

void FitPage::takeValues() {
    // What has gone from the circuit since cannot be set.
    for (const FittedValue& value : m_found->values) {
        if (!findAdjustable(m_document.circuit(), value.what.name)) {
            m_study->showNote(tr("The circuit has changed since: run it again."));
            return;
        }
    }
    m_document.apply(fitEdit(m_document.circuit(), *m_found));
}

} // namespace pumpwright
