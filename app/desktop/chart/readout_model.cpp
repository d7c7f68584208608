#include "app/desktop/chart/readout_model.h"

#include <QPainter>
#include <QPixmap>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

constexpr int kSwatchWidth = 22;
constexpr int kSwatchHeight = 12;

QPixmap swatch(const QPen& pen) {
    QPixmap pixmap(2 * kSwatchWidth, 2 * kSwatchHeight);
    pixmap.setDevicePixelRatio(2);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    QPen thick = pen;
    thick.setWidthF(2);
    painter.setPen(thick);
    painter.drawLine(0, kSwatchHeight / 2, kSwatchWidth, kSwatchHeight / 2);
    return pixmap;
}

} // namespace

void ReadoutModel::setLanes(const std::vector<ChartLane>& lanes, const ChartPalette& palette) {
    std::vector<Row> rows;
    for (const ChartLane& lane : lanes) {
        const auto pens = lanePens(lane, palette);
        for (std::size_t i = 0; i < lane.traces.size(); ++i) {
            rows.push_back({lane.traces[i].name, lane.traces[i].channel, 0, lane.sort, lane.kind, pens[i]});
        }
        for (const ChartLevel& level : lane.levels) {
            rows.push_back({level.name, nullptr, level.si, lane.sort, lane.kind, levelPen(palette)});
        }
    }
    const bool sameRows = std::equal(rows.begin(), rows.end(), m_rows.begin(), m_rows.end(),
                                     [](const Row& one, const Row& other) { return one.name == other.name; });
    if (sameRows) {
        m_rows = std::move(rows);
        announceValues();
        return;
    }
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

void ReadoutModel::setUnits(const ShownUnits& units) {
    m_units = units;
    announceValues();
}

void ReadoutModel::setTime(double time_s) {
    m_time_s = time_s;
    announceValues();
}

void ReadoutModel::setMark(std::optional<double> time_s) {
    m_mark_s = time_s;
    announceValues();
}

void ReadoutModel::setBothUnits(bool both) {
    if (both != m_bothUnits) {
        m_bothUnits = both;
        announceValues();
    }
}

QString ReadoutModel::longestName() const {
    const auto longest = std::max_element(m_rows.begin(), m_rows.end(), [](const Row& one, const Row& other) {
        return one.name.size() < other.name.size();
    });
    return longest == m_rows.end() ? QString() : longest->name;
}

QString ReadoutModel::quantity(double si, QuantityKind kind) const {
    return m_bothUnits ? quantityTextInBothUnits(si, kind, m_units) : quantityText(si, kind, m_units);
}

void ReadoutModel::announceValues() {
    if (!m_rows.empty()) {
        Q_EMIT dataChanged(index(0, Name), index(rowCount() - 1, Difference));
    }
}

QString ReadoutModel::summary() const {
    QStringList all;
    for (const Row& row : m_rows) {
        all << QStringLiteral("%1 %2").arg(row.name, valueText(row));
    }
    return all.join(QStringLiteral(", "));
}

int ReadoutModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int ReadoutModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString ReadoutModel::valueText(const Row& row) const {
    if (!row.channel) {
        return quantity(row.level, row.kind);
    }
    if (row.sort == ChartLane::Sort::States) {
        return stateText(*row.channel, m_time_s);
    }
    const double value = row.channel->at(m_time_s);
    // What the recording does not resolve is noise of the solver.
    const bool isNoise = std::abs(value) < row.channel->probe.resolution;
    return quantity(isNoise ? 0 : value, row.kind);
}

QString ReadoutModel::differenceText(const Row& row) const {
    if (!m_mark_s || !row.channel || row.sort == ChartLane::Sort::States) {
        return {};
    }
    const double change = row.channel->at(m_time_s) - row.channel->at(*m_mark_s);
    const bool isNoise = std::abs(change) < row.channel->probe.resolution;
    const QString text = quantityText(isNoise ? 0 : change, row.kind, m_units);
    return !isNoise && change > 0 ? QStringLiteral("+") + text : text;
}

QVariant ReadoutModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
        return {};
    }
    const Row& row = m_rows[static_cast<std::size_t>(index.row())];
    if (role == Qt::DisplayRole) {
        switch (index.column()) {
        case Name:
            return row.name;
        case Value:
            return valueText(row);
        default:
            return differenceText(row);
        }
    }
    if (role == Qt::DecorationRole && index.column() == Name) {
        return swatch(row.pen);
    }
    if (role == Qt::ToolTipRole) {
        return QStringLiteral("%1: %2").arg(row.name, valueText(row)).toHtmlEscaped();
    }
    return {};
}

QVariant ReadoutModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole || orientation != Qt::Horizontal) {
        return {};
    }
    return section == Name ? tr("Line") : section == Value ? tr("Value") : tr("From mark");
}

} // namespace pumpwright
