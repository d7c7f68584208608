#include "app/desktop/panels/vacuum_gauge.h"

#include "core/units/constants.h"

#include <QPainter>
#include <QtMath>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

constexpr double kFullScale_Pa = 30 * kInchOfMercury_Pa;
constexpr double kStart_deg = 225; ///< of the zero, counted from the right and up
constexpr double kSweep_deg = 270;
constexpr double kStep_Pa = 100; ///< finer than any gauge in a car can be read

/// The way from the hub to a vacuum on the dial.
QPointF towards(double vacuum_Pa) {
    const double share = std::clamp(vacuum_Pa / kFullScale_Pa, 0.0, 1.0);
    const double angle = qDegreesToRadians(kStart_deg - kSweep_deg * share);
    return {std::cos(angle), -std::sin(angle)};
}

/// Ticks of one scale. `room` is how far inside them the numbers stand.
struct Scale {
    double unit_Pa;
    int highest;
    int everyTick;
    int everyNumber;
    double radius;
    double tick;
    double room;
    const char* unit;
};

/// The middle of every scale is free for its unit.
void drawScale(QPainter& painter, const Scale& scale) {
    const double textRadius = scale.radius - scale.tick - scale.room;
    const auto drawText = [&](const QPointF& centre, const QString& text) {
        painter.drawText(QRectF(centre - QPointF(30, 15), QSizeF(60, 30)), Qt::AlignCenter, text);
    };
    drawText(textRadius * towards(kFullScale_Pa / 2), QLatin1String(scale.unit));
    for (int value = 0; value <= scale.highest; value += scale.everyTick) {
        const QPointF way = towards(value * scale.unit_Pa);
        const bool isNumbered = value % scale.everyNumber == 0;
        const double inner = scale.radius - (isNumbered ? scale.tick : scale.tick / 2);
        painter.drawLine(scale.radius * way, inner * way);
        if (isNumbered) {
            drawText(textRadius * way, QString::number(value));
        }
    }
}

} // namespace

VacuumGauge::VacuumGauge(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Vacuum gauge"));
    showVacuum(std::nullopt);
}

void VacuumGauge::showVacuum(std::optional<double> vacuum_Pa) {
    if (vacuum_Pa) {
        vacuum_Pa = kStep_Pa * std::round(*vacuum_Pa / kStep_Pa) + 0.0; // + 0.0: no minus before a zero
    }
    if (vacuum_Pa != m_vacuum_Pa || accessibleDescription().isEmpty()) {
        m_vacuum_Pa = vacuum_Pa;
        setAccessibleDescription(readout());
        update();
    }
}

void VacuumGauge::setMarks(const std::vector<double>& marks_Pa) {
    if (marks_Pa != m_marks_Pa) {
        m_marks_Pa = marks_Pa;
        update();
    }
}

void VacuumGauge::setUnits(const ShownUnits& units) {
    m_units = units;
    setAccessibleDescription(readout());
    update();
}

QString VacuumGauge::readout() const {
    return m_vacuum_Pa ? QStringLiteral("%1 (%2)").arg(readIn(m_units.vacuum), readIn(m_units.secondVacuum))
                       : QStringLiteral("–");
}

/// In tenths of the unit: a needle that moves shows no more.
QString VacuumGauge::readIn(std::string_view unit) const {
    const auto units = displayUnits(QuantityKind::GaugeVacuum);
    const auto one = std::ranges::find(units, unit, &DisplayUnit::symbol);
    if (!m_vacuum_Pa || one == units.end()) {
        return QStringLiteral("– ") + shown(unit);
    }
    const double tenths = std::round(10 * *m_vacuum_Pa / one->factor);
    return QStringLiteral("%1 %2").arg(QString::number(tenths == 0 ? 0 : tenths / 10, 'f', 1), shown(unit));
}

QSize VacuumGauge::sizeHint() const {
    const int side = 14 * fontMetrics().height();
    return {side, side};
}

QSize VacuumGauge::minimumSizeHint() const {
    const int side = 10 * fontMetrics().height();
    return {side, side};
}

void VacuumGauge::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(QRectF(rect()).center());
    const double radius = std::min(width(), height()) / 2.0 - 2;
    painter.setPen(QPen(palette().color(QPalette::Mid), 1.5));
    painter.setBrush(palette().base());
    painter.drawEllipse(QPointF(), radius, radius);
    drawScales(painter, radius);
    drawMarks(painter, radius);
    drawReadout(painter, radius);
    drawNeedle(painter, radius);
}

void VacuumGauge::drawScales(QPainter& painter, double radius) const {
    const double line = fontMetrics().height();
    painter.setPen(QPen(palette().color(QPalette::Text), 1.4));
    drawScale(painter, {1000, 100, 5, 20, radius - 4, 0.5 * line, 0.7 * line, "kPa"});
    QFont small = font();
    small.setPointSizeF(0.85 * small.pointSizeF());
    painter.setFont(small);
    painter.setPen(QPen(palette().color(QPalette::Text), 1));
    drawScale(painter, {kInchOfMercury_Pa, 30, 1, 10, radius - 2.1 * line, 0.4 * line, 0.6 * line, "inHg"});
    painter.setFont(font());
}

void VacuumGauge::drawMarks(QPainter& painter, double radius) const {
    painter.setPen(Qt::NoPen);
    painter.setBrush(palette().highlight());
    for (const double mark_Pa : m_marks_Pa) {
        const QPointF way = towards(mark_Pa);
        const QPointF across(-way.y(), way.x());
        painter.drawPolygon(
            QPolygonF{(radius - 9) * way, radius * way + 5 * across, radius * way - 5 * across});
    }
}

void VacuumGauge::drawNeedle(QPainter& painter, double radius) const {
    if (!m_vacuum_Pa) {
        return;
    }
    const QPointF way = towards(*m_vacuum_Pa);
    const QPointF across(-way.y(), way.x());
    const double reach = radius - 0.9 * fontMetrics().height();
    painter.setPen(QPen(palette().color(QPalette::Base), 1));
    painter.setBrush(palette().text());
    painter.drawPolygon(
        QPolygonF{reach * way, 3.5 * across - 0.12 * radius * way, -3.5 * across - 0.12 * radius * way});
    painter.drawEllipse(QPointF(), 6, 6);
}

/// In the gap of the scales.
void VacuumGauge::drawReadout(QPainter& painter, double radius) const {
    const double line = fontMetrics().height();
    const auto lineAt = [&](double y, const QString& words) {
        painter.drawText(QRectF(-radius, y, 2 * radius, line), Qt::AlignCenter, words);
    };
    painter.setPen(palette().color(QPalette::Text));
    QFont bold = font();
    bold.setBold(true);
    painter.setFont(bold);
    lineAt(0.42 * radius, readIn(m_units.vacuum));
    painter.setFont(font());
    lineAt(0.42 * radius + line, readIn(m_units.secondVacuum));
}

} // namespace pumpwright
