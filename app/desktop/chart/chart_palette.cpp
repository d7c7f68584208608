#include "app/desktop/chart/chart_palette.h"

#include <qcustomplot.h>
#include <QPalette>

#include <array>
#include <map>

namespace pumpwright {
namespace {

struct Pair {
    QColor onLight;
    QColor onDark;
};

Pair colours(TraceRole role) {
    switch (role) {
    case TraceRole::BoosterVacuum:
        return {QColor(0x00, 0x5A, 0x9C), QColor(0x6C, 0xB8, 0xF0)};
    case TraceRole::SwitchVacuum:
        return {QColor(0xB3, 0x4A, 0x00), QColor(0xF2, 0xA1, 0x54)};
    case TraceRole::AssistAsked:
        return {QColor(0x5A, 0x5A, 0x5A), QColor(0xBD, 0xBD, 0xBD)};
    case TraceRole::AssistDelivered:
        return {QColor(0x1E, 0x7A, 0x34), QColor(0x76, 0xD0, 0x8A)};
    case TraceRole::PumpCurrent:
        return {QColor(0xA8, 0x1C, 0x4A), QColor(0xF5, 0x8A, 0xAE)};
    case TraceRole::Voltage:
        return {QColor(0x6A, 0x3D, 0x9A), QColor(0xC3, 0xA2, 0xEE)};
    case TraceRole::Picked:
        return {QColor(0x00, 0x70, 0x70), QColor(0x5F, 0xD0, 0xD0)};
    case TraceRole::OfTrial:
        return {QColor(0x7A, 0x5C, 0x00), QColor(0xE0, 0xC0, 0x60)};
    case TraceRole::Measured:
    case TraceRole::State:
        break;
    }
    return {QColor(0x30, 0x30, 0x30), QColor(0xE0, 0xE0, 0xE0)};
}

} // namespace

ChartPalette::ChartPalette(const QPalette& palette)
    : ground(palette.color(QPalette::Base)), text(palette.color(QPalette::Text)) {
    dark = ground.lightness() < 128;
    grid = dark ? ground.lighter(170) : ground.darker(115);
    if (dark && grid.lightness() < 50) {
        grid = QColor(0x45, 0x45, 0x45);
    }
    level = dark ? QColor(0xB0, 0xA0, 0x60) : QColor(0x80, 0x66, 0x00);
    cursor = dark ? QColor(0xFF, 0x6B, 0x6B) : QColor(0xC0, 0x00, 0x20);
}

QPen ChartPalette::pen(TraceRole role, int nth) const {
    static constexpr std::array kFurtherDashes{Qt::SolidLine, Qt::DashLine, Qt::DotLine, Qt::DashDotLine};
    const Pair pair = colours(role);
    QPen pen(dark ? pair.onDark : pair.onLight, 1.5);
    const bool dashed = role == TraceRole::SwitchVacuum || role == TraceRole::AssistAsked;
    const std::size_t dash = (static_cast<std::size_t>(nth) + (dashed ? 1 : 0)) % kFurtherDashes.size();
    pen.setStyle(role == TraceRole::State ? Qt::SolidLine : kFurtherDashes[dash]);
    return pen;
}

std::vector<QPen> lanePens(const ChartLane& lane, const ChartPalette& palette) {
    std::map<TraceRole, int> seen;
    std::vector<QPen> pens;
    for (const ChartTrace& trace : lane.traces) {
        pens.push_back(palette.pen(trace.role, seen[trace.role]++));
    }
    return pens;
}

QPen levelPen(const ChartPalette& palette) {
    return QPen(palette.level, 1.2, Qt::DashDotLine);
}

void colourAxis(QCPAxis& axis, const ChartPalette& palette) {
    const QPen pen(palette.text, 1);
    axis.setBasePen(pen);
    axis.setTickPen(pen);
    axis.setSubTicks(false);
    axis.setTickLabelColor(palette.text);
    axis.setLabelColor(palette.text);
    axis.grid()->setPen(QPen(palette.grid, 1, Qt::DotLine));
    axis.grid()->setZeroLinePen(QPen(palette.grid, 1));
}

} // namespace pumpwright
