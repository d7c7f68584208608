#include "app/desktop/studies/trials_model.h"

#include "app/desktop/document/document.h"
#include "app/desktop/panels/quantity_text.h"
#include "core/sheet/trial_tables.h"

namespace pumpwright {

TrialsModel::TrialsModel(Document& document, QObject* parent)
    : QAbstractTableModel(parent), m_document(document) {
    connect(&document, &Document::changed, this, &TrialsModel::readCircuit);
    readCircuit();
}

void TrialsModel::readCircuit() {
    std::vector<Row> rows;
    for (const auto& [id, trial] : m_document.circuit().trials) {
        rows.push_back({id, trial.name});
    }
    if (rows != m_rows) {
        beginResetModel();
        m_rows = std::move(rows);
        endResetModel();
    }
}

int TrialsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int TrialsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant TrialsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid) ||
        (role != Qt::DisplayRole && role != Qt::EditRole)) {
        return {};
    }
    const auto row = static_cast<std::size_t>(index.row());
    return shown(index.column() == Number ? trialColumn(row + 1) : m_rows[row].name);
}

bool TrialsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    const std::string name = value.toString().trimmed().toStdString();
    if (!checkIndex(index, CheckIndexOption::IndexIsValid) || role != Qt::EditRole || name.empty()) {
        return false;
    }
    const std::string id = idAt(index.row());
    Trial trial = m_document.circuit().trials.at(id);
    trial.name = name;
    m_document.apply({tr("Rename a trial").toStdString(),
                      {Put<std::string, Trial>{id, std::make_shared<const Trial>(trial)}}});
    return true;
}

QVariant TrialsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole || orientation != Qt::Horizontal) {
        return {};
    }
    return section == Number ? tr("No.") : tr("Trial");
}

Qt::ItemFlags TrialsModel::flags(const QModelIndex& index) const {
    const Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    return index.column() == Name ? flags | Qt::ItemIsEditable : flags;
}

} // namespace pumpwright
