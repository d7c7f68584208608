#include "app/desktop/panels/plan_table_model.h"

#include <algorithm>

namespace pumpwright {

PlanTableModel::PlanTableModel(PlanTable table, const ShownUnits& units, QObject* parent)
    : QAbstractTableModel(parent), m_table(std::move(table)), m_units(units) {}

void PlanTableModel::setTable(PlanTable table) {
    m_table = std::move(table);
    announceValues();
}

void PlanTableModel::setPlan(const DrivePlan& plan) {
    const std::size_t before = m_table.rowCount(m_plan);
    const std::size_t after = m_table.rowCount(plan);
    const std::size_t shorter = std::min(before, after);
    std::size_t head = 0;
    while (head < shorter && sameRow(m_plan, head, plan, head)) {
        ++head;
    }
    std::size_t tail = 0;
    while (tail < shorter - head && sameRow(m_plan, before - 1 - tail, plan, after - 1 - tail)) {
        ++tail;
    }
    const bool restIsSame = head + tail == shorter;
    if (before == after) {
        m_plan = plan;
        announceValues();
    } else if (restIsSame && after < before) {
        beginRemoveRows({}, static_cast<int>(head), static_cast<int>(before - tail) - 1);
        m_plan = plan;
        endRemoveRows();
    } else if (restIsSame) {
        beginInsertRows({}, static_cast<int>(head), static_cast<int>(after - tail) - 1);
        m_plan = plan;
        endInsertRows();
    } else {
        beginResetModel();
        m_plan = plan;
        endResetModel();
    }
}

bool PlanTableModel::sameRow(const DrivePlan& one, std::size_t row, const DrivePlan& other,
                             std::size_t otherRow) const {
    return std::all_of(m_table.columns.begin(), m_table.columns.end(), [&](const PlanColumn& column) {
        return column.isChoice() ? column.choice(one, row) == column.choice(other, otherRow)
                                 : column.quantity(one, row) == column.quantity(other, otherRow);
    });
}

void PlanTableModel::announceValues() {
    if (rowCount() > 0) {
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    }
}

QString PlanTableModel::addRow() {
    DrivePlan plan = m_plan;
    const QString refusal = m_table.add(plan);
    if (refusal.isEmpty()) {
        m_table.sort(plan);
        Q_EMIT planEdited(plan, tr("Add a %1").arg(m_table.row));
    }
    return refusal;
}

void PlanTableModel::removeRowAt(int row) {
    if (row < 0 || row >= rowCount()) {
        return;
    }
    DrivePlan plan = m_plan;
    m_table.remove(plan, static_cast<std::size_t>(row));
    Q_EMIT planEdited(plan, tr("Remove %1 %2").arg(m_table.row).arg(row + 1));
}

int PlanTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_table.rowCount(m_plan));
}

int PlanTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_table.columns.size());
}

QString PlanTableModel::cellText(const PlanColumn& column, std::size_t row) const {
    if (!column.isChoice()) {
        return quantityText(column.quantity(m_plan, row), column.range.kind, m_units);
    }
    const QString id = column.choice(m_plan, row);
    const auto found = std::find_if(column.choices.begin(), column.choices.end(),
                                    [&](const PlanChoice& one) { return one.id == id; });
    return found == column.choices.end() ? tr("missing switch") : found->label;
}

QVariantList PlanTableModel::choices(const PlanColumn& column) const {
    QVariantList pairs;
    for (const PlanChoice& choice : column.choices) {
        pairs << QVariant(QStringList{choice.id, choice.label});
    }
    return pairs;
}

QVariant PlanTableModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
        return {};
    }
    const PlanColumn& column = m_table.columns[static_cast<std::size_t>(index.column())];
    const auto row = static_cast<std::size_t>(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return cellText(column, row);
    case Qt::EditRole:
        return column.isChoice() ? column.choice(m_plan, row) : cellText(column, row);
    case Qt::AccessibleTextRole:
        return QStringLiteral("%1 %2").arg(column.title, cellText(column, row));
    case Qt::TextAlignmentRole:
        return column.isChoice() ? QVariant() : QVariant(Qt::AlignRight | Qt::AlignVCenter);
    case Qt::ToolTipRole:
        return column.isChoice() ? QVariant() : tr("Allowed: %1").arg(rangeText(column.range, m_units));
    case ChoicesRole:
        return column.isChoice() ? QVariant(choices(column)) : QVariant();
    default:
        return {};
    }
}

QVariant PlanTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole) {
        return {};
    }
    return orientation == Qt::Horizontal ? QVariant(m_table.columns[static_cast<std::size_t>(section)].title)
                                         : QVariant(section + 1);
}

Qt::ItemFlags PlanTableModel::flags(const QModelIndex& index) const {
    return index.isValid() ? Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsEditable : Qt::NoItemFlags;
}

QString PlanTableModel::editName(const PlanColumn& column, int row) const {
    return tr("Set %1 of %2 %3").arg(column.title.toLower(), m_table.row).arg(row + 1);
}

bool PlanTableModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !checkIndex(index, CheckIndexOption::IndexIsValid)) {
        return false;
    }
    const PlanColumn& column = m_table.columns[static_cast<std::size_t>(index.column())];
    const auto row = static_cast<std::size_t>(index.row());
    DrivePlan plan = m_plan;
    if (column.isChoice()) {
        column.setChoice(plan, row, value.toString());
    } else {
        if (value.toString() == cellText(column, row)) {
            return true; // four digits read back are not a new value
        }
        const auto quantity = quantityWithin(value.toString(), column.range, m_units);
        if (!quantity) {
            Q_EMIT refused(QStringLiteral("%1: %2").arg(column.title, shown(quantity.error().text)));
            return false;
        }
        column.setQuantity(plan, row, *quantity);
    }
    m_table.sort(plan);
    Q_EMIT refused({});
    Q_EMIT planEdited(plan, editName(column, index.row()));
    return true;
}

} // namespace pumpwright
