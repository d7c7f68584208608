#include "app/desktop/chart/event_model.h"

#include "app/desktop/panels/quantity_text.h"
#include "core/units/quantity_kind.h"

#include <algorithm>

namespace pumpwright {
namespace {

/// The reference of what an event happens to, or its id where an edit has taken it away.
QString referenceOf(const Circuit& circuit, const DriveEvent& event) {
    if (const auto part = circuit.parts.find({event.id}); part != circuit.parts.end()) {
        return shown(part->second.reference);
    }
    if (const auto wire = circuit.wires.find({event.id}); wire != circuit.wires.end()) {
        return shown(wire->second.reference);
    }
    return shown(event.id);
}

} // namespace

void EventModel::setEvents(const Circuit& circuit, const std::vector<DriveEvent>& events) {
    std::vector<Row> rows;
    for (const DriveEvent& event : events) {
        rows.push_back({event.time_s, shown(formatQuantity(event.time_s, QuantityKind::Time)),
                        referenceOf(circuit, event), translatedWords(event.what)});
    }
    if (rows != m_rows) {
        beginResetModel();
        m_rows = std::move(rows);
        endResetModel();
    }
}

int EventModel::rowAt(double time_s) const {
    const auto after = std::upper_bound(m_rows.begin(), m_rows.end(), time_s,
                                        [](double at_s, const Row& row) { return at_s < row.time_s; });
    return static_cast<int>(after - m_rows.begin()) - 1;
}

int EventModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int EventModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant EventModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid) || role != Qt::DisplayRole) {
        return {};
    }
    const Row& row = m_rows[static_cast<std::size_t>(index.row())];
    switch (index.column()) {
    case Time:
        return row.time;
    case Part:
        return row.part;
    default:
        return row.what;
    }
}

QVariant EventModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole || orientation != Qt::Horizontal) {
        return {};
    }
    return section == Time ? tr("Time") : section == Part ? tr("Part") : tr("What happens");
}

} // namespace pumpwright
