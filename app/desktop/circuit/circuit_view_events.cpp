#include "app/desktop/circuit/arrange_actions.h"
#include "app/desktop/circuit/canvas_edits.h"
#include "app/desktop/circuit/circuit_view_p.h"

#include <QContextMenuEvent>
#include <QMenu>
#include <QMimeData>
#include <QPainter>
#include <QPaintEvent>
#include <QPointingDevice>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

constexpr double kNotchZoom = 1.15;
constexpr int kMostStrips = 12;    ///< of what is exposed; for more it is quicker to draw all once
constexpr double kMostNotches = 2; ///< of one event: a free-spinning wheel must not throw the view away

bool comesFromTouchpad(const QWheelEvent& event) {
    return event.device() != nullptr && event.device()->type() == QInputDevice::DeviceType::TouchPad;
}

std::string droppedId(const QMimeData& data) {
    return data.data(QString::fromLatin1(kCatalogueMimeType)).toStdString();
}

QRegion focusFrame(const QRect& viewport) {
    constexpr int kWidth = 2;
    return QRegion(viewport) - viewport.adjusted(kWidth, kWidth, -kWidth, -kWidth);
}

} // namespace

void CircuitView::mousePressEvent(QMouseEvent* event) {
    const bool pans =
        event->button() == Qt::MiddleButton || (event->button() == Qt::LeftButton && d->m_spaceDown);
    if (pans) {
        d->m_panFrom = event->position();
        viewport()->setCursor(Qt::ClosedHandCursor);
    } else if (event->button() == Qt::LeftButton) {
        d->tool().press(d->pointerAt(event->position(), event->modifiers(), true));
        d->forgetRetired();
    }
    event->accept();
}

void CircuitView::mouseMoveEvent(QMouseEvent* event) {
    if (d->m_panFrom) {
        d->panBy(event->position() - *d->m_panFrom);
        d->m_panFrom = event->position();
        return;
    }
    const bool down = event->buttons().testFlag(Qt::LeftButton);
    const CanvasPointer pointer = d->pointerAt(event->position(), event->modifiers(), down);
    d->m_lastPointer = pointer.at;
    d->m_steered.reset();
    d->tool().move(pointer);
    d->forgetRetired();
}

void CircuitView::mouseReleaseEvent(QMouseEvent* event) {
    if (d->m_panFrom) {
        d->m_panFrom.reset();
        viewport()->setCursor(d->m_spaceDown ? Qt::OpenHandCursor : Qt::ArrowCursor);
    } else if (event->button() == Qt::LeftButton) {
        d->tool().release(d->pointerAt(event->position(), event->modifiers(), false));
        d->forgetRetired();
    }
}

void CircuitView::mouseDoubleClickEvent(QMouseEvent* event) {
    mousePressEvent(event);
    if (event->button() == Qt::LeftButton && activity() == CanvasActivity::Select &&
        !d->m_selection.objects().empty()) {
        Q_EMIT nameplateRequested();
    }
}

void CircuitView::wheelEvent(QWheelEvent* event) {
    const bool zooms =
        event->modifiers().testFlag(Qt::ControlModifier) || !(d->m_wheelScrolls || comesFromTouchpad(*event));
    if (event->modifiers().testFlag(Qt::ShiftModifier)) {
        const QPoint angle = event->angleDelta();
        d->panBy({static_cast<double>(angle.y() != 0 ? angle.y() : angle.x()), 0});
    } else if (zooms) {
        const double notches = std::clamp(event->angleDelta().y() / 120.0, -kMostNotches, kMostNotches);
        d->zoomBy(std::pow(kNotchZoom, notches), event->position());
    } else {
        d->panBy(event->pixelDelta().isNull() ? QPointF(event->angleDelta()) / 2
                                              : QPointF(event->pixelDelta()));
    }
    event->accept();
}

void CircuitView::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
        d->m_spaceDown = true;
        viewport()->setCursor(Qt::OpenHandCursor);
    } else if (!d->handleKey(*event)) {
        QGraphicsView::keyPressEvent(event);
    }
    d->forgetRetired();
}

void CircuitView::keyReleaseEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
        d->m_spaceDown = false;
        viewport()->setCursor(activity() == CanvasActivity::Select ? Qt::ArrowCursor : Qt::CrossCursor);
    } else {
        if (!event->isAutoRepeat()) {
            d->tool().keyRelease(event->key());
        }
        QGraphicsView::keyReleaseEvent(event);
    }
}

void CircuitView::contextMenuEvent(QContextMenuEvent* event) {
    if (activity() == CanvasActivity::Operate) {
        return; // its entries are for drawing
    }
    cancel();
    d->forgetRetired();
    d->popUpMenu(event->pos(), event->globalPos());
}

void CircuitView::Private::addArranging(QMenu& menu) {
    const QList<QAction*> actions = newArrangeActions(m_view, &menu);
    enableArrangeActions(actions, m_selection.objects());
    QMenu* arrange = menu.addMenu(tr("Arrange"));
    arrange->addActions(actions);
    arrange->setEnabled(actions.first()->isEnabled());
}

void CircuitView::Private::addLabelling(QMenu& menu) {
    const SelectedObjects& objects = m_selection.objects();
    menu.addAction(tr("Move label"), &m_view, &CircuitView::moveLabel)
        ->setEnabled(labelOf(m_scene.layout(), objects).has_value());
    menu.addAction(tr("Place label automatically"), &m_view, &CircuitView::placeLabels)
        ->setEnabled(hasMovedLabel(m_document.circuit(), objects));
}

void CircuitView::Private::popUpMenu(const QPoint& viewPosition, const QPoint& globalPosition) {
    const CanvasPointer pointer = pointerAt(viewPosition, Qt::NoModifier, false);
    const SelectedObjects under = m_scene.objectOrNamedAt(pointer.at, pointer.reach);
    const SelectedObjects& selected = m_selection.objects();
    const bool isSelected =
        std::includes(selected.parts.begin(), selected.parts.end(), under.parts.begin(), under.parts.end()) &&
        std::includes(selected.wires.begin(), selected.wires.end(), under.wires.begin(), under.wires.end()) &&
        std::includes(selected.hoses.begin(), selected.hoses.end(), under.hoses.begin(), under.hoses.end());
    if (!isSelected || under.empty()) {
        m_selection.select(under);
    }
    auto* menu = new QMenu(&m_view);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    if (!under.parts.empty()) {
        menu->addAction(tr("Rotate"), &m_view, &CircuitView::rotateSelection);
        menu->addAction(tr("Mirror"), &m_view, &CircuitView::mirrorSelection);
        addArranging(*menu);
        addLabelling(*menu);
        menu->addSeparator();
        menu->addAction(tr("Cut"), &m_view, &CircuitView::cutSelection);
        menu->addAction(tr("Copy"), &m_view, &CircuitView::copySelection);
        menu->addAction(tr("Duplicate"), &m_view, &CircuitView::duplicateSelection);
    } else if (under.empty()) {
        menu->addAction(tr("Draw a wire"), &m_view, &CircuitView::startWire);
        menu->addAction(tr("Draw a hose"), &m_view, &CircuitView::startHose);
        menu->addSeparator();
        menu->addAction(tr("Paste"), &m_view, &CircuitView::paste);
        menu->addAction(tr("Select all"), &m_view, &CircuitView::selectAll);
        menu->addAction(tr("Show all"), &m_view, &CircuitView::fit);
    } else {
        menu->addAction(tr("Route again"), &m_view, [this, under] {
            const Circuit& circuit = m_document.circuit();
            m_document.apply(under.wires.empty() ? shaping(circuit, *under.hoses.begin(), {})
                                                 : shaping(circuit, *under.wires.begin(), {}));
        });
        addLabelling(*menu);
    }
    if (!under.empty()) {
        menu->addAction(tr("Delete"), &m_view, &CircuitView::deleteSelection);
        menu->addSeparator();
        menu->addAction(tr("Nameplate"), &m_view, &CircuitView::nameplateRequested);
    }
    menu->popup(globalPosition);
}

void CircuitView::dragEnterEvent(QDragEnterEvent* event) {
    const CatalogueEntry* entry = event->mimeData()->hasFormat(QString::fromLatin1(kCatalogueMimeType))
                                      ? d->m_catalogue.find(droppedId(*event->mimeData()))
                                      : nullptr;
    if (entry) {
        d->place(partFromCatalogue(*entry, {}, {}));
        d->forgetRetired();
        event->acceptProposedAction();
    } else {
        event->ignore();
    }
}

void CircuitView::dragMoveEvent(QDragMoveEvent* event) {
    d->tool().move(d->pointerAt(event->position(), event->modifiers(), false));
    event->acceptProposedAction();
}

void CircuitView::dragLeaveEvent(QDragLeaveEvent*) {
    cancel();
    d->forgetRetired();
}

void CircuitView::dropEvent(QDropEvent* event) {
    d->tool().press(d->pointerAt(event->position(), event->modifiers(), false));
    cancel();
    d->forgetRetired();
    event->acceptProposedAction();
    setFocus();
}

void CircuitView::leaveEvent(QEvent* event) {
    d->tool().leave();
    QGraphicsView::leaveEvent(event);
}

void CircuitView::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange && d) {
        d->useWindowColours();
    }
    QGraphicsView::changeEvent(event);
}

void CircuitView::resizeEvent(QResizeEvent* event) {
    QGraphicsView::resizeEvent(event);
    if (d->m_fitPending || d->m_stayFitted) {
        fit();
    }
    d->updateSceneRect();
    d->updateEmptyState();
}

void CircuitView::focusInEvent(QFocusEvent* event) {
    QGraphicsView::focusInEvent(event);
    viewport()->update(focusFrame(viewport()->rect()));
}

void CircuitView::focusOutEvent(QFocusEvent* event) {
    QGraphicsView::focusOutEvent(event);
    viewport()->update(focusFrame(viewport()->rect()));
}

void CircuitView::scrollContentsBy(int dx, int dy) {
    QGraphicsView::scrollContentsBy(dx, dy);
    // What stays in its place has been moved along with the drawing.
    const QRegion frame = focusFrame(viewport()->rect());
    viewport()->update(frame + frame.translated(dx, dy));
    d->updateEmptyState();
}

void CircuitView::paintEvent(QPaintEvent* event) {
    d->m_exposed = event->region();
    QGraphicsView::paintEvent(event);
    d->m_exposed = {};
}

void CircuitView::drawBackground(QPainter* painter, const QRectF& rect) {
    const auto draw = [&](const QRectF& area) {
        d->drawGrid(*painter, area);
        QGraphicsView::drawBackground(painter, area);
    };
    if (d->m_exposed.rectCount() < 2 || d->m_exposed.rectCount() > kMostStrips) {
        draw(rect);
        return;
    }
    // After scrolling two strips at the edges are exposed, whose common rectangle is the whole view.
    for (const QRect& strip : d->m_exposed) {
        const QRectF area = viewportTransform().inverted().mapRect(QRectF(strip));
        painter->save();
        painter->setClipRect(area);
        draw(area.adjusted(-1, -1, 1, 1));
        painter->restore();
    }
}

void CircuitView::drawForeground(QPainter* painter, const QRectF&) {
    if (!hasFocus()) {
        return;
    }
    painter->save();
    painter->resetTransform();
    painter->setPen(QPen(d->m_scene.colours().selection, 2));
    painter->setBrush(Qt::NoBrush);
    painter->drawRect(viewport()->rect().adjusted(1, 1, -1, -1));
    painter->restore();
}

} // namespace pumpwright
