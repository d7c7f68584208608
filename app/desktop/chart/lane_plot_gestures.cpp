#include "app/desktop/chart/lane_plot.h"

#include <qcustomplot.h>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

constexpr double kShortestSpan_s = 1e-6;
constexpr double kCatchRadius = 8;   ///< [px] round the cursor line
constexpr double kMoveThreshold = 4; ///< [px] below which a press is a click
constexpr double kNotchFactor = 1.25;
constexpr double kNotch = 120; ///< eighths of a degree that one step of a wheel turns [QWheelEvent]
constexpr double kCoarseStep = 10;

} // namespace

QCPAxis* LanePlot::timeAxis() const {
    return m_rects.front()->axis(QCPAxis::atBottom);
}

double LanePlot::timeAt(double x) const {
    return std::clamp(timeAxis()->pixelToCoord(x), 0.0, m_duration_s);
}

double LanePlot::xOf(double time_s) const {
    return timeAxis()->coordToPixel(time_s);
}

double LanePlot::secondsPerPixel() const {
    return (m_span.to_s - m_span.from_s) / std::max(1, m_rects.front()->width());
}

void LanePlot::showSpan(TimeSpan span) {
    const double length = std::clamp(span.to_s - span.from_s, kShortestSpan_s, m_duration_s);
    const double from = std::clamp(span.from_s, 0.0, std::max(0.0, m_duration_s - length));
    m_span = {from, from + length};
    giveSpanToLanes();
}

void LanePlot::showWholeDrive() {
    showSpan({0, m_duration_s});
}

void LanePlot::zoom(double factor) {
    const bool cursorInView = m_cursor_s >= m_span.from_s && m_cursor_s <= m_span.to_s;
    zoomAt(cursorInView ? m_cursor_s : (m_span.from_s + m_span.to_s) / 2, factor);
}

void LanePlot::zoomAt(double time_s, double factor) {
    const double length = m_span.to_s - m_span.from_s;
    const double newLength = std::clamp(length / factor, kShortestSpan_s, m_duration_s);
    const double share = (time_s - m_span.from_s) / length;
    const double from = time_s - share * newLength;
    showSpan({from, from + newLength});
}

void LanePlot::press(QMouseEvent* event) {
    if (!hasLanes() || event->button() != Qt::LeftButton) {
        return;
    }
    setFocus(Qt::MouseFocusReason);
    m_pressX = event->position().x();
    m_pressSpan = m_span;
    m_drag = std::abs(m_pressX - xOf(m_cursor_s)) <= kCatchRadius ? Drag::Cursor : Drag::Undecided;
}

void LanePlot::move(QMouseEvent* event) {
    if (!hasLanes()) {
        return;
    }
    const double x = event->position().x();
    if (m_drag == Drag::None) {
        const bool atCursor = std::abs(x - xOf(m_cursor_s)) <= kCatchRadius;
        m_plot->setCursor(atCursor ? Qt::SplitHCursor : Qt::ArrowCursor);
        return;
    }
    if (m_drag == Drag::Cursor) {
        Q_EMIT cursorRequested(timeAt(x));
        return;
    }
    if (m_drag == Drag::Undecided && std::abs(x - m_pressX) < kMoveThreshold) {
        return;
    }
    m_drag = Drag::View;
    m_plot->setCursor(Qt::ClosedHandCursor);
    const double shift_s = (m_pressX - x) * secondsPerPixel();
    showSpan({m_pressSpan.from_s + shift_s, m_pressSpan.to_s + shift_s});
}

void LanePlot::release(QMouseEvent* event) {
    if (hasLanes() && m_drag == Drag::Undecided) {
        Q_EMIT cursorRequested(timeAt(event->position().x()));
    }
    m_drag = Drag::None;
    m_plot->setCursor(Qt::ArrowCursor);
}

void LanePlot::turnWheel(QWheelEvent* event) {
    if (!hasLanes()) {
        return;
    }
    const QPoint turned = event->angleDelta();
    const bool sideways =
        std::abs(turned.x()) > std::abs(turned.y()) || event->modifiers().testFlag(Qt::ShiftModifier);
    if (sideways) {
        const int amount = turned.x() != 0 ? turned.x() : turned.y();
        const double shift_s = -amount / kNotch * 0.1 * (m_span.to_s - m_span.from_s);
        showSpan({m_span.from_s + shift_s, m_span.to_s + shift_s});
    } else {
        zoomAt(timeAt(event->position().x()), std::pow(kNotchFactor, turned.y() / kNotch));
    }
    event->accept();
}

void LanePlot::keyPressEvent(QKeyEvent* event) {
    if (!hasLanes()) {
        QWidget::keyPressEvent(event);
        return;
    }
    const double pixels = event->modifiers().testFlag(Qt::ShiftModifier) ? kCoarseStep : 1;
    const double step_s = pixels * secondsPerPixel();
    switch (event->key()) {
    case Qt::Key_Left:
        Q_EMIT cursorRequested(std::max(0.0, m_cursor_s - step_s));
        break;
    case Qt::Key_Right:
        Q_EMIT cursorRequested(std::min(m_duration_s, m_cursor_s + step_s));
        break;
    case Qt::Key_Home:
        Q_EMIT cursorRequested(0);
        break;
    case Qt::Key_End:
        Q_EMIT cursorRequested(m_duration_s);
        break;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        zoom(kNotchFactor);
        break;
    case Qt::Key_Minus:
        zoom(1 / kNotchFactor);
        break;
    case Qt::Key_0:
        showWholeDrive();
        break;
    default:
        QWidget::keyPressEvent(event);
    }
}

void LanePlot::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void LanePlot::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

} // namespace pumpwright
