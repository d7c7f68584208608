#include "app/desktop/circuit/circuit_view_p.h"
#include "app/desktop/circuit/free_place.h"

#include <QKeyEvent>
#include <QMenu>
#include <QPainter>
#include <QScrollBar>

#include <algorithm>
#include <cmath>
#include <limits>

namespace pumpwright {
namespace {

constexpr double kLeastZoom = 0.08;
constexpr double kMostZoom = 8;
constexpr qint64 kNudgePause_ms = 1000; ///< after a pause, arrow keys begin a new step of the history

} // namespace

CircuitView::Private::Private(CircuitView& owner, Document& circuitDocument, Selection& sharedSelection,
                              Analysis& analysis)
    : m_view(owner), m_document(circuitDocument), m_selection(sharedSelection),
      m_scene(circuitDocument, sharedSelection, analysis), m_emptyState(new EmptyState(owner.viewport())) {
    owner.installEventFilter(this);
    QObject::connect(m_emptyState, &EmptyState::sampleRequested, &owner, &CircuitView::sampleRequested);
    QObject::connect(m_emptyState, &EmptyState::fileRequested, &owner, &CircuitView::fileRequested);
}

CircuitView::Private::~Private() = default;

void CircuitView::Private::setHint(const QString& text) {
    Q_EMIT m_view.hint(text);
}

void CircuitView::Private::switchTo(std::unique_ptr<Tool> next) {
    if (m_tool) {
        m_tool->deactivate();
        m_retired.push_back(std::move(m_tool));
    }
    m_tool = next ? std::move(next) : selectTool(*this);
    m_steered.reset();
    m_tool->activate();
    updateEmptyState();
    Q_EMIT m_view.activityChanged(m_tool->activity());
}

/// A price of the catalogue; 0, not entered, where the circuit is in another currency.
double CircuitView::Private::priceHere(double price) const {
    return m_document.circuit().currency == m_catalogue.currency ? price : 0;
}

void CircuitView::Private::place(Part prototype) {
    prototype.price = priceHere(prototype.price);
    m_toPlace = std::move(prototype);
    switchTo(placeTool(*this, m_toPlace));
    steerToFreePlace();
}

GridPoint CircuitView::Private::freePlaceFor(const Part& part) const {
    const QRectF seen = m_view.viewportTransform().inverted().mapRect(QRectF(m_view.viewport()->rect()));
    return freePlace(m_scene.layout(), part, seen);
}

void CircuitView::Private::steerToFreePlace() {
    m_steered = scenePoint(freePlaceFor(m_toPlace));
    m_tool->move({*m_steered, Qt::NoModifier, kStep / 2, false});
}

bool CircuitView::Private::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (m_tool->wantsText(key->key(), key->modifiers())) {
            event->accept();
            return true;
        }
    }
    return QObject::eventFilter(watched, event);
}

Wire CircuitView::Private::newWire() const {
    Wire wire = m_newWire;
    wire.price_perMetre = priceHere(m_catalogue.wirePrice_perMetrePerSquareMillimetre * wire.area_m2 * 1e6);
    return wire;
}

Hose CircuitView::Private::newHose() const {
    Hose hose;
    hose.price_perMetre = priceHere(m_catalogue.hosePrice_perMetre);
    return hose;
}

void CircuitView::Private::setCursorShape(Qt::CursorShape shape) {
    m_view.viewport()->setCursor(shape);
}

CanvasPointer CircuitView::Private::pointerAt(const QPointF& viewPosition, Qt::KeyboardModifiers modifiers,
                                              bool down) const {
    const QTransform toScene = m_view.viewportTransform().inverted();
    return {toScene.map(viewPosition), modifiers, kReach_px / m_view.zoom(), down};
}

void CircuitView::Private::zoomBy(double factor, const QPointF& viewPosition) {
    const double target = std::clamp(m_view.zoom() * factor, kLeastZoom, kMostZoom);
    const QPointF before = m_view.viewportTransform().inverted().map(viewPosition);
    m_view.setTransform(QTransform::fromScale(target, target));
    updateSceneRect();
    const QPointF after = m_view.viewportTransform().map(before);
    panBy(viewPosition - after);
    Q_EMIT m_view.zoomChanged(target);
}

void CircuitView::Private::panBy(const QPointF& pixels) {
    m_stayFitted = false;
    // First make room, so that panning never stops at an edge.
    const QRectF seen = m_view.viewportTransform().inverted().mapRect(QRectF(m_view.viewport()->rect()));
    const QPointF shift = -pixels / m_view.zoom();
    m_view.setSceneRect(m_view.sceneRect() | seen | seen.translated(shift));
    QScrollBar* across = m_view.horizontalScrollBar();
    QScrollBar* along = m_view.verticalScrollBar();
    across->setValue(across->value() - static_cast<int>(std::lround(pixels.x())));
    along->setValue(along->value() - static_cast<int>(std::lround(pixels.y())));
}

void CircuitView::Private::updateSceneRect() {
    const QRectF seen = m_view.viewportTransform().inverted().mapRect(QRectF(m_view.viewport()->rect()));
    const QRectF bounds = m_scene.layout().bounds();
    m_view.setSceneRect(bounds.adjusted(-seen.width(), -seen.height(), seen.width(), seen.height()) | seen);
}

void CircuitView::Private::updateEmptyState() {
    const bool empty = m_document.circuit().parts.empty();
    m_emptyState->setVisible(empty && m_tool && m_tool->activity() == CanvasActivity::Select);
    const QRect room = m_view.viewport()->rect();
    const int width = std::min(m_emptyState->sizeHint().width(), room.width());
    m_emptyState->resize(width, m_emptyState->heightForWidth(width));
    m_emptyState->move(room.center() - m_emptyState->rect().center());
}

void CircuitView::Private::centreOnSelection() {
    const QRectF bounds = m_scene.boundsOf(m_selection.objects());
    if (bounds.isEmpty()) {
        return;
    }
    if (m_view.zoom() < 0.5) {
        zoomBy(1 / m_view.zoom(), m_view.viewport()->rect().center());
    }
    const QPointF middle = m_view.viewportTransform().map(bounds.center());
    panBy(QPointF(m_view.viewport()->rect().center()) - middle);
}

void CircuitView::Private::useWindowColours() {
    m_scene.setColours(canvasPalette(m_view.palette()));
    QPalette palette = m_emptyState->palette();
    palette.setColor(QPalette::WindowText, m_scene.colours().text);
    m_emptyState->setPalette(palette);
}

void CircuitView::Private::selectNeighbour(int dx, int dy) {
    const auto& parts = m_scene.layout().parts;
    const auto& selected = m_selection.objects().parts;
    const auto current = selected.empty() ? parts.end() : parts.find(*selected.begin());
    const QPointF from = current == parts.end() ? m_view.viewportTransform().inverted().map(QPointF())
                                                : current->second.origin();
    double least = std::numeric_limits<double>::infinity();
    std::optional<PartId> nearest;
    for (const auto& [id, picture] : parts) {
        const QPointF way = picture.origin() - from;
        const double forward = way.x() * dx + way.y() * dy;
        const double aside = std::abs(way.x() * dy) + std::abs(way.y() * dx);
        const double cost = forward + 2 * aside;
        const bool isAhead = current == parts.end() || (forward > 0 && aside <= 2 * forward);
        if (isAhead && !selected.contains(id) && std::abs(cost) < least) {
            least = std::abs(cost);
            nearest = id;
        }
    }
    if (nearest) {
        m_selection.show({{*nearest}, {}, {}});
    }
}

QPointF CircuitView::Private::steeringStart() const {
    const QPointF seen =
        m_view.viewportTransform().inverted().map(QPointF(m_view.viewport()->rect().center()));
    return m_steered.value_or(m_view.underMouse() ? m_lastPointer : seen);
}

bool CircuitView::Private::steerTool(const QKeyEvent& event) {
    if (m_tool->activity() == CanvasActivity::Select) {
        return false;
    }
    const int step = event.modifiers().testFlag(Qt::ShiftModifier) ? 5 : 1;
    QPointF by;
    switch (event.key()) {
    case Qt::Key_Left:
        by = {-kStep * step, 0};
        break;
    case Qt::Key_Right:
        by = {kStep * step, 0};
        break;
    case Qt::Key_Up:
        by = {0, -kStep * step};
        break;
    case Qt::Key_Down:
        by = {0, kStep * step};
        break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        break;
    default:
        return false;
    }
    m_steered = scenePoint(nearestGridPoint(steeringStart() + by));
    const CanvasPointer pointer{*m_steered, Qt::NoModifier, kStep / 2, false};
    if (by.isNull()) {
        const QPointF at = *m_steered;
        m_tool->press(pointer);
        m_tool->release(pointer);
        m_steered = at;
        if (m_tool->activity() == CanvasActivity::Place) {
            steerToFreePlace();
            return true;
        }
    }
    m_tool->move(pointer);
    m_view.ensureVisible(QRectF(pointer.at, QSizeF(1, 1)), 40, 40);
    return true;
}

bool CircuitView::Private::handleArrow(const QKeyEvent& event) {
    int dx = 0;
    int dy = 0;
    switch (event.key()) {
    case Qt::Key_Left:
        dx = -1;
        break;
    case Qt::Key_Right:
        dx = 1;
        break;
    case Qt::Key_Up:
        dy = -1;
        break;
    case Qt::Key_Down:
        dy = 1;
        break;
    default:
        return false;
    }
    if (event.modifiers().testFlag(Qt::ControlModifier)) {
        selectNeighbour(dx, dy);
        return true;
    }
    const int step = event.modifiers().testFlag(Qt::ShiftModifier) ? 5 : 1;
    if (m_selection.objects().parts.empty()) {
        panBy(QPointF(-dx, -dy) * 40 * step);
    } else {
        m_view.nudgeSelection(dx * step, dy * step);
    }
    return true;
}

bool CircuitView::Private::handleKey(const QKeyEvent& event) {
    if (m_tool->keyPress(event.key(), event.modifiers()) || steerTool(event) || handleArrow(event)) {
        return true;
    }
    switch (event.key()) {
    case Qt::Key_Escape:
        m_view.cancel();
        return true;
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        m_view.deleteSelection();
        return true;
    case Qt::Key_R:
        m_view.rotateSelection();
        return true;
    case Qt::Key_M:
        m_view.mirrorSelection();
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        Q_EMIT m_view.nameplateRequested();
        return true;
    default:
        return false;
    }
}

void CircuitView::Private::drawGrid(QPainter& painter, const QRectF& area) const {
    const Palette& colours = m_scene.colours();
    painter.fillRect(area, colours.paper);
    const double zoom = m_view.zoom();
    const int every = kStep * zoom >= 9 ? 1 : 5;
    if (kStep * zoom * every < 9) {
        return;
    }
    QVector<QPointF> fine;
    QVector<QPointF> strong;
    const GridPoint low = nearestGridPoint(area.topLeft() - QPointF(kStep, kStep));
    const GridPoint high = nearestGridPoint(area.bottomRight() + QPointF(kStep, kStep));
    for (int y = low.y; y <= high.y; ++y) {
        for (int x = low.x; x <= high.x; ++x) {
            const bool isStrong = x % 5 == 0 && y % 5 == 0;
            if (isStrong || every == 1) {
                (isStrong ? strong : fine).push_back(scenePoint({x, y}));
            }
        }
    }
    // Square dots without smoothing: there are thousands of them in each frame.
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    QPen pen(colours.grid, 1);
    pen.setCosmetic(true);
    painter.setPen(pen);
    painter.drawPoints(fine.constData(), static_cast<int>(fine.size()));
    pen.setColor(colours.gridStrong);
    pen.setWidth(2);
    painter.setPen(pen);
    painter.drawPoints(strong.constData(), static_cast<int>(strong.size()));
    painter.restore();
}

QString CircuitView::Private::nudgeKey() {
    const bool paused = !m_sinceNudge.isValid() || m_sinceNudge.elapsed() > kNudgePause_ms;
    if (paused || !(m_nudged == m_selection.objects())) {
        ++m_nudgeBurst;
        m_nudged = m_selection.objects();
    }
    m_sinceNudge.start();
    return QStringLiteral("nudge %1").arg(m_nudgeBurst);
}

GridPoint CircuitView::Private::pasteOffset(const Circuit& fragment) const {
    constexpr int kAside = 2;
    if (!m_view.underMouse()) {
        return {kAside * m_pastes, kAside * m_pastes};
    }
    GridPoint low = fragment.parts.begin()->second.at;
    GridPoint high = low;
    for (const auto& [id, part] : fragment.parts) {
        low = {std::min(low.x, part.at.x), std::min(low.y, part.at.y)};
        high = {std::max(high.x, part.at.x), std::max(high.y, part.at.y)};
    }
    const GridPoint middle{low.x + (high.x - low.x) / 2, low.y + (high.y - low.y) / 2};
    return nearestGridPoint(m_lastPointer) - middle;
}

} // namespace pumpwright
