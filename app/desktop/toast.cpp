#include "app/desktop/toast.h"

#include <QAccessible>
#include <QEvent>
#include <QPainter>

#include <algorithm>

namespace pumpwright {
namespace {

constexpr int kShown_ms = 5000;
constexpr int kFromEdge_px = 16;

} // namespace

Toast::Toast(QWidget& over) : QLabel(&over) {
    setTextFormat(Qt::PlainText);
    setWordWrap(true);
    setAlignment(Qt::AlignCenter);
    setMargin(10);
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setFocusPolicy(Qt::NoFocus);
    setAccessibleName(tr("Notice"));
    m_end.setSingleShot(true);
    m_end.setInterval(kShown_ms);
    connect(&m_end, &QTimer::timeout, this, &QWidget::hide);
    over.installEventFilter(this);
    hide();
}

void Toast::say(const QString& text) {
    setText(text);
    setAccessibleDescription(text);
    place();
    show();
    raise();
    m_end.start();
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void Toast::place() {
    const QSize room = parentWidget()->size();
    const int widest = std::min(room.width() - 2 * kFromEdge_px, 60 * fontMetrics().averageCharWidth());
    const int wanted = fontMetrics().horizontalAdvance(text()) + 2 * margin() + 8;
    const int width = std::clamp(wanted, 80, std::max(80, widest));
    const QSize size(width, heightForWidth(width));
    setGeometry(
        QRect(QPoint((room.width() - width) / 2, room.height() - size.height() - kFromEdge_px), size));
}

bool Toast::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize && isVisible()) {
        place();
    }
    return QLabel::eventFilter(watched, event);
}

void Toast::paintEvent(QPaintEvent* event) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(palette().color(QPalette::WindowText), 1));
    painter.setBrush(palette().color(QPalette::Window));
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 6, 6);
    painter.end();
    QLabel::paintEvent(event);
}

} // namespace pumpwright
