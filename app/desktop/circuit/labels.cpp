#include "app/desktop/circuit/labels.h"

#include "app/desktop/circuit/canvas_edits.h"

#include <QCoreApplication>

#include <algorithm>

namespace pumpwright {
namespace {

/// Texts that undo shows; %1 is the reference of the one part or line, or how many there are.
struct EditNames {
    Q_DECLARE_TR_FUNCTIONS(pumpwright::Labels)
};

std::optional<StandingLabel> labelOf(const PartId& id, const PartPicture& picture) {
    const QRectF rect = labelRect(picture);
    return rect.isEmpty() ? std::nullopt
                          : std::optional(StandingLabel{
                                {{id}, {}, {}}, rect.translated(picture.origin()), picture.origin()});
}

std::optional<StandingLabel> labelOf(const WireId& id, const LinePicture& picture) {
    return picture.labelRect.isEmpty()
               ? std::nullopt
               : std::optional(StandingLabel{{{}, {id}, {}}, picture.labelRect, labelAnchor(picture)});
}

template <class Id, class Picture>
std::optional<StandingLabel> labelOfOne(const std::map<Id, Picture>& pictures, const std::set<Id>& ids) {
    const auto found = pictures.find(*ids.begin());
    return found == pictures.end() ? std::nullopt : labelOf(found->first, found->second);
}

/// Calls `visit` with id and copy of each of the objects that the circuit has.
template <class Id, class Object, class Visit>
void visitEach(const std::map<Id, Object>& objects, const std::set<Id>& ids, Visit visit) {
    for (const Id& id : ids) {
        if (const auto found = objects.find(id); found != objects.end()) {
            visit(id, found->second);
        }
    }
}

/// Sets the offset of all of them, where it is another one by now.
std::vector<Change> withOffset(const Circuit& circuit, const SelectedObjects& objects,
                               std::optional<LabelOffset> from) {
    std::vector<Change> changes;
    const auto put = [&](const auto& id, auto object, auto putOne) {
        if (object.labelFrom != from) {
            object.labelFrom = from;
            changes.push_back(putOne(id, std::move(object)));
        }
    };
    visitEach(circuit.parts, objects.parts,
              [&](const PartId& id, const Part& part) { put(id, part, putPart); });
    visitEach(circuit.wires, objects.wires,
              [&](const WireId& id, const Wire& wire) { put(id, wire, putWire); });
    visitEach(circuit.hoses, objects.hoses,
              [&](const HoseId& id, const Hose& hose) { put(id, hose, putHose); });
    return changes;
}

} // namespace

std::optional<StandingLabel> labelOf(const CircuitLayout& layout, const SelectedObjects& one) {
    if (one.parts.size() + one.wires.size() + one.hoses.size() != 1) {
        return std::nullopt;
    }
    if (!one.parts.empty()) {
        return labelOfOne(layout.parts, one.parts);
    }
    return one.wires.empty() ? std::nullopt : labelOfOne(layout.wires, one.wires);
}

std::optional<StandingLabel> labelAt(const CircuitLayout& layout, const QPointF& at) {
    std::optional<StandingLabel> smallest;
    const auto area = [](const QRectF& rect) { return rect.width() * rect.height(); };
    const auto look = [&](const auto& pictures) {
        for (const auto& [id, picture] : pictures) {
            auto label = labelOf(id, picture);
            if (label && label->rect.contains(at) &&
                (!smallest || area(label->rect) < area(smallest->rect))) {
                smallest = std::move(label);
            }
        }
    };
    look(layout.parts);
    look(layout.wires);
    return smallest;
}

Edit labelling(const Circuit& circuit, const SelectedObjects& one, LabelOffset from) {
    return {editName(EditNames::tr("Move label of %1"), circuit, one), withOffset(circuit, one, from)};
}

Edit freeLabels(const Circuit& circuit, const SelectedObjects& objects) {
    return {editName(EditNames::tr("Place label of %1 automatically"), circuit, objects),
            withOffset(circuit, objects, std::nullopt)};
}

bool hasMovedLabel(const Circuit& circuit, const SelectedObjects& objects) {
    return !withOffset(circuit, objects, std::nullopt).empty();
}

} // namespace pumpwright
