#include "app/desktop/circuit/circuit_scene.h"

#include "app/desktop/circuit/canvas_edits.h"
#include "app/desktop/document/analysis.h"
#include "app/desktop/document/hand_operation.h"
#include "app/desktop/shown_text.h"

#include <QLineF>

#include <algorithm>
#include <cmath>
#include <limits>

namespace pumpwright {
namespace {

double distanceToStretch(const QPointF& at, const QPointF& from, const QPointF& to) {
    const QRectF box = QRectF(from, to).normalized();
    const QPointF nearest(std::clamp(at.x(), box.left(), box.right()),
                          std::clamp(at.y(), box.top(), box.bottom()));
    return QLineF(at, nearest).length();
}

double distanceToPath(const QPointF& at, const QPolygonF& path) {
    double least = std::numeric_limits<double>::infinity();
    for (int i = 0; i + 1 < path.size(); ++i) {
        least = std::min(least, distanceToStretch(at, path[i], path[i + 1]));
    }
    return least;
}

template <class Id>
void noteWorst(std::map<Id, SignalWord>& marks, const std::vector<Id>& ids, SignalWord word) {
    for (const Id& id : ids) {
        const auto [entry, isNew] = marks.emplace(id, word);
        entry->second = std::min(entry->second, word);
    }
}

template <class Id>
bool lineIsInside(const std::map<Id, LinePicture>& lines, const Id& id, const QRectF& area) {
    return area.contains(lines.at(id).path.boundingRect());
}

} // namespace

CircuitScene::CircuitScene(Document& document, Selection& selection, Analysis& analysis, QObject* parent)
    : QGraphicsScene(parent), m_document(document), m_selection(selection), m_analysis(analysis),
      m_drawing(lightPalette()), m_overlayItem(std::make_unique<OverlayItem>(m_drawing)) {
    addItem(m_overlayItem.get());
    connect(&m_document, &Document::changed, this, [this] {
        m_preview.reset();
        // Its channels are to be looked up for other parts.
        m_reader.reset();
        m_drive.reset();
        readLiveState();
        readFindings();
        layOut();
        dropVanishedSelection();
    });
    connect(&m_selection, &Selection::changed, this, &CircuitScene::syncAll);
    connect(&m_analysis, &Analysis::findingsChanged, this, [this] {
        readFindings();
        syncAll();
    });
    const auto showLive = [this] {
        readLiveState();
        syncAll();
    };
    connect(&m_analysis, &Analysis::driveChanged, this, showLive);
    connect(&m_analysis, &Analysis::cursorMoved, this, showLive);
    readLiveState();
    readFindings();
    layOut();
}

CircuitScene::~CircuitScene() = default;

void CircuitScene::setHandOperation(HandOperation& operation) {
    m_operation = &operation;
    connect(&operation, &HandOperation::moved, this, [this] {
        readLiveState();
        syncAll();
    });
}

void CircuitScene::setColours(const Palette& palette) {
    m_drawing = CircuitDrawing(palette);
    m_shown.forgetPixmaps();
    update();
}

const Circuit& CircuitScene::circuit() const {
    return m_preview ? *m_preview : m_document.circuit();
}

void CircuitScene::preview(const Edit& edit) {
    m_preview = m_document.circuit();
    applyEdit(*m_preview, edit);
    layOut();
}

void CircuitScene::endPreview() {
    if (m_preview) {
        m_preview.reset();
        layOut();
    }
}

void CircuitScene::setOverlay(const Overlay& overlay) {
    m_overlayItem->sync(overlay);
}

void CircuitScene::setHovered(const SelectedObjects& objects) {
    if (!(m_hovered == objects)) {
        m_hovered = objects;
        syncAll();
    }
}

void CircuitScene::dropVanishedSelection() {
    m_hovered = {};
    m_selection.select(existing(m_document.circuit(), m_selection.objects()));
}

void CircuitScene::readLiveState() {
    if (m_operation != nullptr && m_operation->isOn()) {
        const auto recent = m_operation->recent();
        m_live = recent ? liveStateNow(m_document.circuit(), *recent) : restState(m_document.circuit());
        return;
    }
    if (m_drive != m_analysis.drive()) {
        m_drive = m_analysis.drive();
        m_reader = m_drive ? std::make_unique<LiveReader>(m_document.circuit(), m_drive->recording) : nullptr;
    }
    m_live =
        m_reader ? m_reader->at(m_analysis.cursor_s(), m_analysis.pace()) : restState(m_document.circuit());
}

void CircuitScene::readFindings() {
    m_marks = {};
    for (const Finding& finding : m_analysis.findings()) {
        if (finding.word != SignalWord::Notice && !finding.waiver) {
            noteWorst(m_marks.parts, finding.parts, finding.word);
            noteWorst(m_marks.wires, finding.wires, finding.word);
            noteWorst(m_marks.hoses, finding.hoses, finding.word);
        }
    }
}

void CircuitScene::layOut() {
    m_layout = layoutOf(circuit(), std::move(m_layout));
    m_shown.setObjects(m_layout, circuit());
    syncAll();
    update();
    Q_EMIT layoutChanged();
}

void CircuitScene::syncAll() {
    for (const QRectF& area : m_shown.sync({m_live, m_marks, m_selection.objects(), m_hovered})) {
        update(area);
    }
}

void CircuitScene::drawBackground(QPainter* painter, const QRectF& area) {
    m_shown.paint(*painter, m_drawing, area);
}

std::optional<CircuitScene::Caught> CircuitScene::connectionAt(const QPointF& at, double reach) const {
    std::optional<Caught> nearest;
    double least = reach;
    for (const auto& [id, picture] : m_layout.parts) {
        for (const ConnectionPoint& point : picture.points) {
            const double distance = QLineF(at, scenePoint(point.at)).length();
            if (distance <= least) {
                least = distance;
                nearest = Caught{{id, point.name}, point};
            }
        }
    }
    return nearest;
}

SelectedObjects CircuitScene::objectAt(const QPointF& at, double reach) const {
    SelectedObjects found;
    double smallest = std::numeric_limits<double>::infinity();
    for (const auto& [id, picture] : m_layout.parts) {
        const QRectF body = picture.body.translated(picture.origin()).adjusted(-5, -5, 5, 5);
        const double size = body.width() * body.height();
        if (body.contains(at) && size < smallest) {
            smallest = size;
            found.parts = {id};
        }
    }
    if (!found.empty()) {
        return found;
    }
    double least = reach;
    const auto tryLine = [&](const LinePicture& picture, const SelectedObjects& one) {
        const double distance = distanceToPath(at, picture.path);
        if (distance < least) {
            least = distance;
            found = one;
        }
    };
    for (const auto& [id, picture] : m_layout.wires) {
        tryLine(picture, {{}, {id}, {}});
    }
    for (const auto& [id, picture] : m_layout.hoses) {
        tryLine(picture, {{}, {}, {id}});
    }
    return found;
}

std::optional<StandingLabel> CircuitScene::labelAt(const QPointF& at, double reach) const {
    const double zoom = kReach_px / reach;
    const bool isHidden = CircuitDrawing::isFar(zoom) || !objectAt(at, 0).parts.empty();
    return isHidden ? std::nullopt : pumpwright::labelAt(m_layout, at);
}

SelectedObjects CircuitScene::objectOrNamedAt(const QPointF& at, double reach) const {
    const auto label = labelAt(at, reach);
    return label ? label->of : objectAt(at, reach);
}

SelectedObjects CircuitScene::objectsIn(const QRectF& area) const {
    SelectedObjects found;
    for (const auto& [id, picture] : m_layout.parts) {
        if (area.contains(picture.body.translated(picture.origin()))) {
            found.parts.insert(id);
        }
    }
    for (const auto& [id, picture] : m_layout.wires) {
        if (lineIsInside(m_layout.wires, id, area)) {
            found.wires.insert(id);
        }
    }
    for (const auto& [id, picture] : m_layout.hoses) {
        if (lineIsInside(m_layout.hoses, id, area)) {
            found.hoses.insert(id);
        }
    }
    return found;
}

QString connectionText(const Circuit& circuit, const CircuitScene::Caught& caught) {
    const auto part = circuit.parts.find(caught.end.part);
    const QString reference = part == circuit.parts.end() ? QString() : shown(part->second.reference);
    const QString text = reference + QStringLiteral(": ") + shown(caught.end.terminal);
    return caught.point.meaning.isEmpty() ? text : text + QStringLiteral(", ") + caught.point.meaning;
}

QRectF CircuitScene::boundsOf(const SelectedObjects& objects) const {
    QRectF bounds;
    for (const PartId& id : objects.parts) {
        if (const auto found = m_layout.parts.find(id); found != m_layout.parts.end()) {
            bounds |= found->second.extent.translated(found->second.origin());
        }
    }
    for (const WireId& id : objects.wires) {
        if (const auto found = m_layout.wires.find(id); found != m_layout.wires.end()) {
            bounds |= found->second.extent;
        }
    }
    for (const HoseId& id : objects.hoses) {
        if (const auto found = m_layout.hoses.find(id); found != m_layout.hoses.end()) {
            bounds |= found->second.extent;
        }
    }
    return bounds;
}

} // namespace pumpwright
