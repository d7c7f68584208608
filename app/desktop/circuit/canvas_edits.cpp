#include "app/desktop/circuit/canvas_edits.h"

#include "app/desktop/circuit/geometry.h"
#include "app/desktop/circuit/line_surgery.h"
#include "app/desktop/shown_text.h"
#include "core/parts/part_kind.h"

#include <QCoreApplication>

#include <algorithm>
#include <functional>

namespace pumpwright {
namespace {

/// Texts that undo shows; %1 is the reference of the one part or line, or how many there are.
struct EditNames {
    Q_DECLARE_TR_FUNCTIONS(pumpwright::CanvasEdits)
};

template <class Id, class Object>
void addReferences(const std::map<Id, Object>& objects, const std::set<Id>& ids, QStringList& references) {
    for (const Id& id : ids) {
        if (const auto found = objects.find(id); found != objects.end()) {
            references << shown(found->second.reference);
        }
    }
}

/// "K1", "K1, F2" or "5 objects".
QString subjectText(const Circuit& circuit, const SelectedObjects& objects) {
    constexpr int kMostNamed = 3;
    QStringList references;
    addReferences(circuit.parts, objects.parts, references);
    if (references.isEmpty()) {
        addReferences(circuit.wires, objects.wires, references);
        addReferences(circuit.hoses, objects.hoses, references);
    }
    if (references.size() > kMostNamed) {
        return EditNames::tr("%n objects", nullptr, static_cast<int>(references.size()));
    }
    return references.join(QStringLiteral(", "));
}

using PointMap = std::function<GridPoint(GridPoint)>;
using TurnMap = std::function<void(Part&)>;
using LabelMap = std::function<LabelOffset(LabelOffset)>;

template <class Line>
bool isInside(const Line& line, const std::set<PartId>& parts) {
    return parts.contains(line.from.part) && parts.contains(line.to.part);
}

void mapBends(std::vector<GridPoint>& bends, const PointMap& map) {
    std::transform(bends.begin(), bends.end(), bends.begin(), map);
}

/// How a gesture maps what it takes along.
struct Mapping {
    PointMap place;
    TurnMap turn = [](Part&) {};
    LabelMap label = [](LabelOffset from) { return from; };
};

template <class Object>
void mapLabel(Object& object, const LabelMap& map) {
    if (object.labelFrom) {
        object.labelFrom = map(*object.labelFrom);
    }
}

/// The line with its fixed corners and its label mapped.
template <class Line>
Line mappedLine(Line line, const Mapping& mapping) {
    mapBends(line.bends, mapping.place);
    mapLabel(line, mapping.label);
    return line;
}

/// Maps parts, and what is fixed of the lines between them, to other places.
std::vector<Change> mapped(const Circuit& circuit, const SelectedObjects& objects, const Mapping& mapping) {
    std::vector<Change> changes;
    for (const PartId& id : objects.parts) {
        Part part = circuit.parts.at(id);
        part.at = mapping.place(part.at);
        mapping.turn(part);
        mapLabel(part, mapping.label);
        changes.push_back(putPart(id, std::move(part)));
    }
    const auto addLines = [&](const auto& lines, auto put) {
        for (const auto& [id, line] : lines) {
            if (isInside(line, objects.parts)) {
                auto copy = mappedLine(line, mapping);
                if (!(copy == line)) {
                    changes.push_back(put(id, std::move(copy)));
                }
            }
        }
    };
    addLines(circuit.wires, putWire);
    addLines(circuit.hoses, putHose);
    return changes;
}

/// Middle of the places of the parts, on the grid.
GridPoint middleOf(const Circuit& circuit, const std::set<PartId>& parts) {
    if (parts.empty()) {
        return {};
    }
    GridPoint low = circuit.parts.at(*parts.begin()).at;
    GridPoint high = low;
    for (const PartId& id : parts) {
        const GridPoint at = circuit.parts.at(id).at;
        low = {std::min(low.x, at.x), std::min(low.y, at.y)};
        high = {std::max(high.x, at.x), std::max(high.y, at.y)};
    }
    return {low.x + (high.x - low.x) / 2, low.y + (high.y - low.y) / 2};
}

template <class Id, class Line>
void copyInside(const std::map<Id, Line>& from, std::map<Id, Line>& to, const std::set<PartId>& parts) {
    for (const auto& [id, line] : from) {
        if (isInside(line, parts)) {
            to.emplace(id, line);
        }
    }
}

/// Builds an addition on a copy of the circuit, so that each new id and reference counts for the next.
class Adder {
public:
    explicit Adder(const Circuit& circuit) : m_circuit(circuit) {}

    PartId add(Part part) {
        const PartId id = freePartId(m_circuit);
        part.reference = freeReference(m_circuit, std::string(kindOf(part).letter()));
        m_circuit.parts.emplace(id, part);
        addition.edit.changes.push_back(putPart(id, std::move(part)));
        addition.objects.parts.insert(id);
        return id;
    }
    void add(Wire wire) {
        const WireId id = freeWireId(m_circuit);
        wire.reference = freeReference(m_circuit, "W");
        m_circuit.wires.emplace(id, wire);
        addition.edit.changes.push_back(putWire(id, std::move(wire)));
        addition.objects.wires.insert(id);
    }
    void add(Hose hose) {
        const HoseId id = freeHoseId(m_circuit);
        hose.reference = freeReference(m_circuit, "H");
        m_circuit.hoses.emplace(id, hose);
        addition.edit.changes.push_back(putHose(id, std::move(hose)));
        addition.objects.hoses.insert(id);
    }
    Addition named(const QString& pattern) {
        addition.edit.name = editName(pattern, m_circuit, addition.objects);
        return std::move(addition);
    }

    Addition addition;

private:
    Circuit m_circuit;
};

template <class Line>
Line rejoined(Line line, const std::map<PartId, PartId>& newIds, GridPoint by) {
    line.from.part = newIds.at(line.from.part);
    line.to.part = newIds.at(line.to.part);
    mapBends(line.bends, [by](GridPoint at) { return at + by; });
    return line;
}

} // namespace

std::string editName(const QString& pattern, const Circuit& circuit, const SelectedObjects& objects) {
    return pattern.arg(subjectText(circuit, objects)).toStdString();
}

Edit movement(const Circuit& circuit, const SelectedObjects& objects, GridPoint by) {
    return {editName(EditNames::tr("Move %1"), circuit, objects),
            mapped(circuit, objects, {[by](GridPoint at) { return at + by; }})};
}

Edit rotation(const Circuit& circuit, const SelectedObjects& objects) {
    const GridPoint middle = middleOf(circuit, objects.parts);
    const auto turnPoint = [middle](GridPoint at) {
        const GridPoint from = at - middle;
        return middle + GridPoint{-from.y, from.x};
    };
    return {editName(EditNames::tr("Rotate %1"), circuit, objects),
            mapped(circuit, objects,
                   {turnPoint, [](Part& part) { part.quarterTurns = (part.quarterTurns + 1) % 4; },
                    [](LabelOffset from) {
                        return LabelOffset{-from.y_mm, from.x_mm};
                    }})};
}

Edit mirroring(const Circuit& circuit, const SelectedObjects& objects) {
    const GridPoint middle = middleOf(circuit, objects.parts);
    const auto mirrorPoint = [middle](GridPoint at) { return GridPoint{2 * middle.x - at.x, at.y}; };
    return {editName(EditNames::tr("Mirror %1"), circuit, objects),
            mapped(circuit, objects,
                   {mirrorPoint,
                    [](Part& part) {
                        part.quarterTurns = (4 - part.quarterTurns) % 4;
                        part.mirrored = !part.mirrored;
                    },
                    [](LabelOffset from) {
                        return LabelOffset{-from.x_mm, from.y_mm};
                    }})};
}

Edit removal(const Circuit& circuit, const SelectedObjects& objects) {
    if (objects.parts.size() == 1 && objects.wires.empty() && objects.hoses.empty()) {
        if (const auto healing = healingRemoval(circuit, *objects.parts.begin())) {
            return *healing;
        }
    }
    Edit edit{editName(EditNames::tr("Delete %1"), circuit, objects), {}};
    Circuit left = circuit;
    const auto add = [&](const Edit& next) {
        applyEdit(left, next);
        edit.changes.insert(edit.changes.end(), next.changes.begin(), next.changes.end());
    };
    for (const WireId& id : objects.wires) {
        add({{}, {takeWire(id)}});
    }
    for (const HoseId& id : objects.hoses) {
        add({{}, {takeHose(id)}});
    }
    for (const PartId& id : objects.parts) {
        add(removalOfPart(left, id));
    }
    return edit;
}

Circuit fragmentOf(const Circuit& circuit, const SelectedObjects& objects) {
    Circuit fragment;
    for (const PartId& id : objects.parts) {
        fragment.parts.emplace(id, circuit.parts.at(id));
    }
    copyInside(circuit.wires, fragment.wires, objects.parts);
    copyInside(circuit.hoses, fragment.hoses, objects.parts);
    return fragment;
}

Addition pasting(const Circuit& circuit, const Circuit& fragment, GridPoint by) {
    Adder adder(circuit);
    std::map<PartId, PartId> newIds;
    for (const auto& [id, part] : fragment.parts) {
        Part copy = part;
        copy.at = part.at + by;
        newIds.emplace(id, adder.add(std::move(copy)));
    }
    for (const auto& [id, wire] : fragment.wires) {
        adder.add(rejoined(wire, newIds, by));
    }
    for (const auto& [id, hose] : fragment.hoses) {
        adder.add(rejoined(hose, newIds, by));
    }
    return adder.named(EditNames::tr("Paste %1"));
}

Addition placing(const Circuit& circuit, const Part& prototype, GridPoint at) {
    Adder adder(circuit);
    Part part = prototype;
    part.at = at;
    adder.add(std::move(part));
    return adder.named(EditNames::tr("Place %1"));
}

Addition joining(const Circuit& circuit, Wire wire) {
    Adder adder(circuit);
    adder.add(std::move(wire));
    return adder.named(EditNames::tr("Draw %1"));
}

Addition joining(const Circuit& circuit, Hose hose) {
    Adder adder(circuit);
    adder.add(std::move(hose));
    return adder.named(EditNames::tr("Draw %1"));
}

Edit shaping(const Circuit& circuit, const WireId& id, std::vector<GridPoint> bends) {
    Wire wire = circuit.wires.at(id);
    wire.bends = std::move(bends);
    return {editName(EditNames::tr("Lay %1"), circuit, {{}, {id}, {}}), {putWire(id, std::move(wire))}};
}

Edit shaping(const Circuit& circuit, const HoseId& id, std::vector<GridPoint> bends) {
    Hose hose = circuit.hoses.at(id);
    hose.bends = std::move(bends);
    return {editName(EditNames::tr("Lay %1"), circuit, {{}, {}, {id}}), {putHose(id, std::move(hose))}};
}

SelectedObjects allObjects(const Circuit& circuit) {
    SelectedObjects all;
    for (const auto& [id, part] : circuit.parts) {
        all.parts.insert(id);
    }
    for (const auto& [id, wire] : circuit.wires) {
        all.wires.insert(id);
    }
    for (const auto& [id, hose] : circuit.hoses) {
        all.hoses.insert(id);
    }
    return all;
}

SelectedObjects existing(const Circuit& circuit, SelectedObjects objects) {
    std::erase_if(objects.parts, [&](const PartId& id) { return !circuit.parts.contains(id); });
    std::erase_if(objects.wires, [&](const WireId& id) { return !circuit.wires.contains(id); });
    std::erase_if(objects.hoses, [&](const HoseId& id) { return !circuit.hoses.contains(id); });
    return objects;
}

} // namespace pumpwright
