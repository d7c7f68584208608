#include "app/desktop/circuit/circuit_view.h"

#include "app/desktop/circuit/accessible_circuit.h"
#include "app/desktop/circuit/arranging.h"
#include "app/desktop/circuit/canvas_edits.h"
#include "app/desktop/circuit/circuit_view_p.h"
#include "app/desktop/circuit/clipboard.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QMimeData>

namespace pumpwright {

namespace {
constexpr double kButtonZoom = 1.25;
constexpr double kLargestFit = 1.5; ///< a small circuit is not blown up beyond this
constexpr double kFitMargin = 12;
} // namespace

CircuitView::CircuitView(Document& document, Selection& selection, Analysis& analysis, QWidget* parent)
    : QGraphicsView(parent), d(std::make_unique<Private>(*this, document, selection, analysis)) {
    setScene(&d->m_scene);
    setRenderHint(QPainter::Antialiasing);
    setMouseTracking(true);
    setAcceptDrops(true);
    setFocusPolicy(Qt::StrongFocus);
    setFrameShape(QFrame::NoFrame);
    setTransformationAnchor(QGraphicsView::NoAnchor);
    setResizeAnchor(QGraphicsView::NoAnchor);
    setViewportUpdateMode(QGraphicsView::SmartViewportUpdate);
    setAccessibleName(tr("Circuit"));
    setAccessibleDescription(
        tr("The drawing of the circuit. Ctrl with the arrow keys goes from part to part."));
    connect(&document, &Document::changed, this, [this](const ChangedObjects& objects) {
        if (objects.all) {
            cancel();
            fit();
        }
        d->updateEmptyState();
    });
    connect(&selection, &Selection::showRequested, this, [this] { d->centreOnSelection(); });
    connect(&d->m_scene, &CircuitScene::layoutChanged, this, [this] { d->updateSceneRect(); });
    d->useWindowColours();
    d->switchTo(nullptr);
    d->updateEmptyState();
    d->m_accessible = QAccessible::registerAccessibleInterface(new AccessibleCircuit(*this, *d, analysis));
}

CircuitView::~CircuitView() {
    QAccessible::deleteAccessibleInterface(d->m_accessible);
    setScene(nullptr);
}

void CircuitView::setCatalogue(const Catalogue& catalogue) {
    d->m_catalogue = catalogue;
}

void CircuitView::setNewWire(const Wire& wire) {
    d->m_newWire = wire;
}

void CircuitView::setWheelScrolls(bool scrolls) {
    d->m_wheelScrolls = scrolls;
}

void CircuitView::setHandOperation(HandOperation& operation) {
    d->m_operation = &operation;
    d->m_scene.setHandOperation(operation);
}

CanvasActivity CircuitView::activity() const {
    return d->tool().activity();
}

double CircuitView::zoom() const {
    return transform().m11();
}

void CircuitView::place(const Part& prototype) {
    d->place(prototype);
    setFocus();
}

void CircuitView::placeWhereFree(const Part& prototype) {
    cancel();
    Part part = prototype;
    part.price = d->priceHere(part.price);
    const Addition addition = placing(d->m_document.circuit(), part, d->freePlaceFor(part));
    d->m_document.apply(addition.edit);
    d->m_selection.select(addition.objects);
}

void CircuitView::startWire() {
    d->switchTo(wireTool(*d, Repeat::UntilEscape));
    setFocus();
}

void CircuitView::startHose() {
    d->switchTo(hoseTool(*d, Repeat::UntilEscape));
    setFocus();
}

void CircuitView::operateByHand() {
    if (d->m_operation != nullptr) {
        d->switchTo(handTool(*d, *d->m_operation));
        setFocus();
    }
}

void CircuitView::cancel() {
    d->switchTo(nullptr);
}

void CircuitView::zoomIn() {
    d->zoomBy(kButtonZoom, viewport()->rect().center());
}

void CircuitView::zoomOut() {
    d->zoomBy(1 / kButtonZoom, viewport()->rect().center());
}

void CircuitView::zoomToActualSize() {
    d->zoomBy(1 / zoom(), viewport()->rect().center());
}

void CircuitView::fit() {
    const QRectF bounds = d->m_scene.layout().bounds();
    const QSizeF room = QSizeF(viewport()->size()) - QSizeF(2 * kFitMargin, 2 * kFitMargin);
    d->m_fitPending = !isVisible() || room.isEmpty();
    if (d->m_fitPending) {
        return;
    }
    const double factor =
        bounds.isEmpty()
            ? 1.0
            : std::min({room.width() / bounds.width(), room.height() / bounds.height(), kLargestFit});
    setTransform(QTransform::fromScale(factor, factor));
    const QRectF around(bounds.center() - QPointF(room.width(), room.height()) / factor, 2 * room / factor);
    setSceneRect(around | bounds);
    centerOn(bounds.center());
    d->updateSceneRect();
    d->m_stayFitted = true;
    Q_EMIT zoomChanged(zoom());
}

void CircuitView::rotateSelection() {
    if (activity() != CanvasActivity::Place || !d->tool().keyPress(Qt::Key_R, Qt::NoModifier)) {
        d->m_document.apply(rotation(d->m_document.circuit(), d->m_selection.objects()));
    }
}

void CircuitView::mirrorSelection() {
    if (activity() != CanvasActivity::Place || !d->tool().keyPress(Qt::Key_M, Qt::NoModifier)) {
        d->m_document.apply(mirroring(d->m_document.circuit(), d->m_selection.objects()));
    }
}

void CircuitView::arrangeSelection(Arrangement how) {
    cancel();
    d->m_document.apply(arranging(d->m_document.circuit(), d->m_selection.objects(), how));
}

void CircuitView::moveLabel() {
    cancel();
    if (const auto label = labelOf(d->m_scene.layout(), d->m_selection.objects())) {
        d->switchTo(labelTool(*d, *label, std::nullopt));
        setFocus();
    } else {
        d->setHint(tr("Select one part or wire that has a label."));
    }
}

void CircuitView::placeLabels() {
    cancel();
    d->m_document.apply(freeLabels(d->m_document.circuit(), d->m_selection.objects()));
}

void CircuitView::deleteSelection() {
    cancel();
    d->m_document.apply(removal(d->m_document.circuit(), d->m_selection.objects()));
}

void CircuitView::cutSelection() {
    copySelection();
    deleteSelection();
}

void CircuitView::copySelection() {
    const Circuit fragment = fragmentOf(d->m_document.circuit(), d->m_selection.objects());
    if (!fragment.parts.empty()) {
        QGuiApplication::clipboard()->setMimeData(clipboardData(fragment).release());
        d->m_pastes = 0;
    }
}

void CircuitView::paste() {
    const QMimeData* mimeData = QGuiApplication::clipboard()->mimeData();
    const std::optional<Circuit> fragment = mimeData ? fragmentFrom(*mimeData) : std::nullopt;
    if (!fragment || fragment->parts.empty()) {
        d->setHint(tr("There are no parts on the clipboard. Copy some first."));
        return;
    }
    ++d->m_pastes;
    const Addition addition = pasting(d->m_document.circuit(), *fragment, d->pasteOffset(*fragment));
    d->m_document.apply(addition.edit);
    d->m_selection.select(addition.objects);
}

void CircuitView::duplicateSelection() {
    const Circuit fragment = fragmentOf(d->m_document.circuit(), d->m_selection.objects());
    if (!fragment.parts.empty()) {
        const Addition addition = pasting(d->m_document.circuit(), fragment, {2, 2});
        d->m_document.apply(addition.edit);
        d->m_selection.select(addition.objects);
    }
}

void CircuitView::selectAll() {
    d->m_selection.select(allObjects(d->m_document.circuit()));
}

void CircuitView::nudgeSelection(int dx, int dy) {
    const SelectedObjects& objects = d->m_selection.objects();
    if (!objects.parts.empty()) {
        const QString key = d->nudgeKey();
        d->m_document.applyMerging(movement(d->m_document.circuit(), objects, {dx, dy}), key);
    }
}

} // namespace pumpwright
