#include "app/desktop/circuit/accessible_circuit.h"

#include "app/desktop/circuit/accessible_object.h"
#include "app/desktop/circuit/canvas_edits.h"
#include "app/desktop/circuit/circuit_scene.h"
#include "app/desktop/circuit/circuit_view.h"
#include "app/desktop/circuit/spoken_text.h"
#include "app/desktop/panels/findings_model.h"

#include <QMetaObject>

#include <algorithm>
#include <set>

namespace pumpwright {
namespace {

template <class... Functions>
struct Either : Functions... {
    using Functions::operator()...;
};
template <class... Functions>
Either(Functions...) -> Either<Functions...>;

template <class Id, class Object>
const Object* find(const std::map<Id, Object>& objects, const Id& id) {
    const auto found = objects.find(id);
    return found == objects.end() ? nullptr : &found->second;
}

std::vector<CanvasObject> objectsIn(const SelectedObjects& selected) {
    std::vector<CanvasObject> objects;
    objects.insert(objects.end(), selected.parts.begin(), selected.parts.end());
    objects.insert(objects.end(), selected.wires.begin(), selected.wires.end());
    objects.insert(objects.end(), selected.hoses.begin(), selected.hoses.end());
    return objects;
}

bool concerns(const Finding& finding, const SelectedObjects& one) {
    const SelectedObjects about = subjectsOf(finding);
    return std::includes(about.parts.begin(), about.parts.end(), one.parts.begin(), one.parts.end()) &&
           std::includes(about.wires.begin(), about.wires.end(), one.wires.begin(), one.wires.end()) &&
           std::includes(about.hoses.begin(), about.hoses.end(), one.hoses.begin(), one.hoses.end());
}

} // namespace

AccessibleCircuit::AccessibleCircuit(CircuitView& view, ToolHost& canvas, Analysis& analysis)
    : QAccessibleWidget(&view, QAccessible::Canvas), m_view(view), m_canvas(canvas), m_analysis(analysis) {
    take(objectsNow());
    QObject::connect(&canvas.document(), &Document::changed, &m_connections,
                     [this](const ChangedObjects& objects) { follow(objects.all); });
    QObject::connect(&analysis, &Analysis::findingsChanged, &m_connections, [this] { follow(false); });
    QObject::connect(&canvas.selection(), &Selection::changed, &m_connections, [this] { tellSelection(); });
    QObject::connect(&analysis, &Analysis::driveChanged, &m_connections, [this] { tellState(); });
    QObject::connect(&analysis, &Analysis::cursorMoved, &m_connections, [this] { tellState(); });
}

AccessibleCircuit::~AccessibleCircuit() {
    for (const auto& [object, id] : m_known) {
        QAccessible::deleteAccessibleInterface(id);
    }
}

int AccessibleCircuit::childCount() const {
    return static_cast<int>(m_objects.size()) + QAccessibleWidget::childCount();
}

QAccessibleInterface* AccessibleCircuit::child(int index) const {
    const int objects = static_cast<int>(m_objects.size());
    return index >= 0 && index < objects ? access(m_objects[static_cast<std::size_t>(index)])
                                         : QAccessibleWidget::child(index - objects);
}

int AccessibleCircuit::indexOfChild(const QAccessibleInterface* child) const {
    if (const auto* ours = dynamic_cast<const AccessibleObject*>(child)) {
        const auto place = m_places.find(ours->canvasObject());
        return place == m_places.end() ? -1 : place->second;
    }
    const int index = QAccessibleWidget::indexOfChild(child);
    return index < 0 ? index : index + static_cast<int>(m_objects.size());
}

QAccessibleInterface* AccessibleCircuit::childAt(int x, int y) const {
    const QPoint at = m_view.viewport()->mapFromGlobal(QPoint(x, y));
    if (!m_view.viewport()->rect().contains(at)) {
        return QAccessibleWidget::childAt(x, y);
    }
    constexpr double kReach = 6;
    const auto under = objectsIn(m_canvas.scene().objectAt(m_view.mapToScene(at), kReach / m_view.zoom()));
    return under.empty() ? QAccessibleWidget::childAt(x, y) : access(under.front());
}

QAccessibleInterface* AccessibleCircuit::focusChild() const {
    const auto object = m_view.hasFocus() ? current() : std::nullopt;
    return object ? access(*object) : QAccessibleWidget::focusChild();
}

QAccessible::State AccessibleCircuit::state() const {
    QAccessible::State state = QAccessibleWidget::state();
    state.multiSelectable = true;
    return state;
}

bool AccessibleCircuit::contains(const CanvasObject& object) const {
    return m_places.contains(object);
}

QString AccessibleCircuit::nameOf(const CanvasObject& object) const {
    const Circuit& circuit = this->circuit();
    return std::visit(Either{[&](const PartId& id) {
                                 const Part* part = find(circuit.parts, id);
                                 return part ? spokenName(*part) : QString();
                             },
                             [&](const WireId& id) {
                                 const Wire* wire = find(circuit.wires, id);
                                 return wire ? spokenName(circuit, *wire) : QString();
                             },
                             [&](const HoseId& id) {
                                 const Hose* hose = find(circuit.hoses, id);
                                 return hose ? spokenName(circuit, *hose) : QString();
                             },
                             [&](const FindingRef& ref) {
                                 const Finding* finding = findingOf(ref);
                                 return finding ? spokenName(*finding) : QString();
                             }},
                      object);
}

QString AccessibleCircuit::stateTextOf(const CanvasObject& object) const {
    if (const auto* ref = std::get_if<FindingRef>(&object)) {
        const Finding* finding = findingOf(*ref);
        return finding ? spokenState(*finding) : QString();
    }
    const Circuit& circuit = this->circuit();
    const LiveState& live = m_canvas.scene().live();
    QStringList texts;
    if (const auto* id = std::get_if<PartId>(&object)) {
        const Part* part = find(circuit.parts, *id);
        const PartLive* state = find(live.parts, *id);
        texts << (part && state ? spokenState(*part, *state) : QString());
    } else if (const auto* wireId = std::get_if<WireId>(&object)) {
        const Wire* wire = find(circuit.wires, *wireId);
        const WireLive* state = find(live.wires, *wireId);
        texts << (wire ? spokenState(circuit, *wire, state ? *state : WireLive{}) : QString());
    }
    for (const Finding& finding : m_analysis.findings()) {
        if (!finding.waiver && concerns(finding, meaningOf(object))) {
            texts << spokenName(finding);
        }
    }
    texts.removeAll(QString());
    return texts.join(QStringLiteral("; "));
}

QRect AccessibleCircuit::boundsOf(const CanvasObject& object) const {
    const QRectF bounds = m_canvas.scene().boundsOf(meaningOf(object));
    const QRectF seen = bounds.isEmpty() ? QRectF() : m_view.viewportTransform().mapRect(bounds);
    return seen.toAlignedRect().translated(m_view.viewport()->mapToGlobal(QPoint()));
}

bool AccessibleCircuit::isSelected(const CanvasObject& object) const {
    const SelectedObjects& selected = selection().objects();
    const SelectedObjects meant = meaningOf(object);
    return std::holds_alternative<FindingRef>(object)
               ? !meant.empty() && meant == selected
               : !meant.empty() && std::ranges::includes(objectsIn(selected), objectsIn(meant));
}

bool AccessibleCircuit::hasFocus(const CanvasObject& object) const {
    return m_view.hasFocus() && current() == object;
}

SelectedObjects AccessibleCircuit::meaningOf(const CanvasObject& object) const {
    return std::visit(Either{[](const PartId& id) {
                                 return SelectedObjects{{id}, {}, {}};
                             },
                             [](const WireId& id) {
                                 return SelectedObjects{{}, {id}, {}};
                             },
                             [](const HoseId& id) {
                                 return SelectedObjects{{}, {}, {id}};
                             },
                             [this](const FindingRef& ref) {
                                 const Finding* finding = findingOf(ref);
                                 return finding ? existing(circuit(), subjectsOf(*finding))
                                                : SelectedObjects{};
                             }},
                      object);
}

QAccessibleInterface* AccessibleCircuit::access(const CanvasObject& object) const {
    const auto [entry, isNew] = m_known.try_emplace(object);
    if (isNew) {
        entry->second = QAccessible::registerAccessibleInterface(new AccessibleObject(*this, object));
    }
    return QAccessible::accessibleInterface(entry->second);
}

const Finding* AccessibleCircuit::findingOf(const FindingRef& ref) const {
    int left = ref.nth;
    for (const Finding& finding : m_analysis.findings()) {
        if (finding.rule == ref.rule && finding.subjects() == ref.subjects && left-- == 0) {
            return &finding;
        }
    }
    return nullptr;
}

std::vector<CanvasObject> AccessibleCircuit::objectsNow() const {
    std::vector<CanvasObject> objects = objectsIn(allObjects(circuit()));
    std::map<FindingRef, int> seen;
    for (const Finding& finding : m_analysis.findings()) {
        FindingRef ref{finding.rule, finding.subjects()};
        ref.nth = seen[ref]++;
        objects.emplace_back(ref);
    }
    return objects;
}

std::optional<CanvasObject> AccessibleCircuit::current() const {
    const auto objects = objectsIn(selection().objects());
    return objects.size() == 1 ? std::optional(objects.front()) : std::nullopt;
}

void AccessibleCircuit::take(std::vector<CanvasObject> objects) {
    m_objects = std::move(objects);
    m_places.clear();
    for (const CanvasObject& object : m_objects) {
        m_places.emplace(object, static_cast<int>(m_places.size()));
    }
}

void AccessibleCircuit::send(QAccessibleEvent event) const {
    if (m_listener) {
        m_listener(event);
    } else {
        QAccessible::updateAccessibility(&event);
    }
}

void AccessibleCircuit::follow(bool everything) {
    std::vector<CanvasObject> now = objectsNow();
    if (now == m_objects) {
        return;
    }
    const std::set<CanvasObject> after(now.begin(), now.end());
    const std::map<CanvasObject, int> before = m_places;
    for (const auto& [object, id] : m_known) {
        if (before.contains(object) && !after.contains(object)) {
            send({access(object), QAccessible::ObjectDestroyed});
        }
    }
    take(std::move(now));
    for (const CanvasObject& object : m_objects) {
        if (isHeard() && !everything && !before.contains(object)) {
            send({access(object), QAccessible::ObjectCreated});
        }
    }
    send({&m_view, QAccessible::ObjectReorder});
    // Later: this may be an action of the very interface that is to go.
    QMetaObject::invokeMethod(
        &m_connections, [this] { forgetVanished(); }, Qt::QueuedConnection);
}

void AccessibleCircuit::forgetVanished() {
    std::erase_if(m_known, [this](const auto& entry) {
        const bool vanished = !contains(entry.first);
        if (vanished) {
            QAccessible::deleteAccessibleInterface(entry.second);
        }
        return vanished;
    });
}

void AccessibleCircuit::tellSelection() {
    const auto object = current();
    m_toldState = object ? stateTextOf(*object) : QString();
    if (!isHeard()) {
        return;
    }
    if (!object || !contains(*object)) {
        send({&m_view, QAccessible::SelectionWithin});
        return;
    }
    send({access(*object), QAccessible::Selection});
    if (m_view.hasFocus()) {
        send({access(*object), QAccessible::Focus});
    }
}

void AccessibleCircuit::tellState() {
    // While the drive plays, speech could not keep up.
    const auto object = m_analysis.pace() == 0 && isHeard() ? current() : std::nullopt;
    const QString state = object ? stateTextOf(*object) : QString();
    if (object && contains(*object) && state != m_toldState) {
        m_toldState = state;
        send({access(*object), QAccessible::DescriptionChanged});
    }
}

} // namespace pumpwright
