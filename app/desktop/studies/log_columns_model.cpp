#include "app/desktop/studies/log_columns_model.h"

#include "app/desktop/panels/plan_table_model.h"
#include "app/desktop/shown_text.h"
#include "core/units/quantity_kind.h"

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

const std::string kTime = "time";

QVariant choice(const QString& id, const QString& label) {
    return QVariant(QStringList{id, label});
}

/// What can be read in a log: states and shares are no measurements.
bool isMeasured(const LogTarget& target) {
    switch (target.kind) {
    case QuantityKind::GaugeVacuum:
    case QuantityKind::Voltage:
    case QuantityKind::Current:
    case QuantityKind::Temperature:
    case QuantityKind::AngularSpeed:
    case QuantityKind::PressureDifference:
    case QuantityKind::Force:
        return true;
    default:
        return false;
    }
}

} // namespace

void LogColumnsModel::setLog(CsvNumbers table, const LogReading& reading, std::vector<LogTarget> targets) {
    beginResetModel();
    m_table = std::move(table);
    m_targets = std::move(targets);
    std::erase_if(m_targets, [](const LogTarget& target) { return !isMeasured(target); });
    m_rows.clear();
    for (const std::string& name : m_table.names) {
        m_rows.push_back({{}, unitInName(name)});
    }
    for (const LogColumn& column : reading.columns) {
        m_rows[column.column] = {column.target, column.unit};
    }
    if (!m_rows.empty()) {
        m_rows[reading.timeColumn] = {kTime, reading.timeUnit};
    }
    endResetModel();
    Q_EMIT readingChanged();
}

LogReading LogColumnsModel::reading() const {
    LogReading reading;
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const Row& row = m_rows[i];
        if (row.target == kTime) {
            reading.timeColumn = i;
            reading.timeUnit = row.unit;
        } else if (!row.target.empty()) {
            reading.columns.push_back({i, row.target, row.unit});
        }
    }
    return reading;
}

int LogColumnsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int LogColumnsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString LogColumnsModel::cell(const QModelIndex& index) const {
    const auto at = static_cast<std::size_t>(index.row());
    const Row& row = m_rows[at];
    switch (index.column()) {
    case Name:
        return m_table.names[at].empty() ? tr("column %1").arg(index.row() + 1) : shown(m_table.names[at]);
    case Is:
        return row.target.empty() ? tr("not used") : row.target == kTime ? tr("time") : shown(row.target);
    case Unit:
        return shown(row.unit);
    default:
        break;
    }
    const auto first = std::ranges::find_if_not(m_table.columns[at], [](double x) { return std::isnan(x); });
    return first == m_table.columns[at].end() ? QString() : QString::number(*first);
}

QVariantList LogColumnsModel::targetChoices() const {
    QVariantList choices{choice({}, tr("not used")), choice(QString::fromStdString(kTime), tr("time"))};
    for (const LogTarget& target : m_targets) {
        choices << choice(editable(target.name), shown(target.name));
    }
    return choices;
}

QVariantList LogColumnsModel::unitChoices(const Row& row) const {
    const auto target = std::ranges::find(m_targets, row.target, &LogTarget::name);
    const QuantityKind kind = row.target == kTime         ? QuantityKind::Time
                              : target == m_targets.end() ? QuantityKind::Number
                                                          : target->kind;
    QVariantList choices;
    for (const DisplayUnit& unit : displayUnits(kind)) {
        choices << choice(editable(unit.symbol), shown(unit.symbol));
        if (kind == QuantityKind::GaugeVacuum) {
            const QString absolute = editable(unit.symbol) + QStringLiteral(" abs");
            choices << choice(absolute, tr("%1 absolute").arg(shown(unit.symbol)));
        }
    }
    return choices;
}

QVariant LogColumnsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
        return {};
    }
    const Row& row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return cell(index);
    case Qt::EditRole:
        return index.column() == Is     ? editable(row.target)
               : index.column() == Unit ? editable(row.unit)
                                        : cell(index);
    case PlanTableModel::ChoicesRole:
        return index.column() == Is     ? QVariant(targetChoices())
               : index.column() == Unit ? QVariant(unitChoices(row))
                                        : QVariant();
    default:
        return {};
    }
}

bool LogColumnsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !checkIndex(index, CheckIndexOption::IndexIsValid) ||
        (index.column() != Is && index.column() != Unit)) {
        return false;
    }
    Row& row = m_rows[static_cast<std::size_t>(index.row())];
    const std::string text = value.toString().toStdString();
    if (index.column() == Unit) {
        row.unit = text;
    } else {
        if (text == kTime) { // one column is the time
            for (Row& other : m_rows) {
                other.target = other.target == kTime ? std::string() : other.target;
            }
        }
        row = {text, unitInName(m_table.names[static_cast<std::size_t>(index.row())])};
    }
    Q_EMIT dataChanged(this->index(0, 0), this->index(rowCount() - 1, ColumnCount - 1));
    Q_EMIT readingChanged();
    return true;
}

QVariant LogColumnsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole) {
        return {};
    }
    const QStringList titles{tr("Column"), tr("Is"), tr("Unit"), tr("First value")};
    return orientation == Qt::Horizontal ? QVariant(titles.value(section)) : QVariant(section + 1);
}

Qt::ItemFlags LogColumnsModel::flags(const QModelIndex& index) const {
    Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    return index.column() == Is || index.column() == Unit ? flags | Qt::ItemIsEditable : flags;
}

} // namespace pumpwright
