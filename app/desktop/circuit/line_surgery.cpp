#include "app/desktop/circuit/line_surgery.h"

#include "app/desktop/circuit/geometry.h"
#include "core/parts/part_kind.h"
#include "core/parts/placement.h"

#include <QCoreApplication>
#include <QLineF>

#include <algorithm>
#include <cmath>
#include <limits>

namespace pumpwright {
namespace {

/// Texts that undo shows.
struct EditNames {
    Q_DECLARE_TR_FUNCTIONS(pumpwright::LineSurgery)
};

constexpr double kLengthStep_m = 0.01; ///< nobody cuts wire finer
constexpr double kShortest_m = 0.01;

int stepsBetween(GridPoint from, GridPoint to) {
    return std::abs(to.x - from.x) + std::abs(to.y - from.y);
}

GridPoint stepFrom(GridPoint from, GridPoint to) {
    const auto sign = [](int value) { return (value > 0) - (value < 0); };
    return {sign(to.x - from.x), sign(to.y - from.y)};
}

/// Edits made one after the other on a copy, collected as one.
class Surgery {
public:
    explicit Surgery(const Circuit& circuit) : m_circuit(circuit) {}

    const Circuit& circuit() const { return m_circuit; }
    void make(const Edit& edit) {
        applyEdit(m_circuit, edit);
        m_addition.edit.changes.insert(m_addition.edit.changes.end(), edit.changes.begin(),
                                       edit.changes.end());
    }
    void add(const Addition& addition) {
        make(addition.edit);
        m_addition.objects.parts.insert(addition.objects.parts.begin(), addition.objects.parts.end());
        m_addition.objects.wires.insert(addition.objects.wires.begin(), addition.objects.wires.end());
        m_addition.objects.hoses.insert(addition.objects.hoses.begin(), addition.objects.hoses.end());
    }
    PartId addPart(const Part& prototype, GridPoint at) {
        const Addition placed = placing(m_circuit, prototype, at);
        add(placed);
        return *placed.objects.parts.begin();
    }
    Addition named(const QString& name) {
        m_addition.edit.name = name.toStdString();
        return m_addition;
    }

private:
    Circuit m_circuit;
    Addition m_addition;
};

Change putLine(const WireId& id, Wire wire) {
    return putWire(id, std::move(wire));
}
Change putLine(const HoseId& id, Hose hose) {
    return putHose(id, std::move(hose));
}

/// Cuts the line in two: what it is joined with at the cut comes in between. The first half keeps the line's
/// id and reference.
template <class Id, class Line>
void cut(Surgery& surgery, const Id& id, const Line& line, const CutPlace& place, const End& before,
         const End& after) {
    Line first = line;
    Line second = line;
    first.to = before;
    second.from = after;
    const double share = std::round(line.length_m * place.share / kLengthStep_m) * kLengthStep_m;
    first.length_m = std::clamp(share, kShortest_m, std::max(kShortest_m, line.length_m - kShortest_m));
    second.length_m = std::max(kShortest_m, line.length_m - first.length_m);
    first.bends.clear(); // the program lays both halves anew
    second.bends.clear();
    first.labelFrom.reset();
    second.labelFrom.reset();
    surgery.make({{}, {putLine(id, std::move(first))}});
    surgery.make(joining(surgery.circuit(), std::move(second)).edit);
}

QString referenceText(const std::string& reference) {
    return QString::fromStdString(reference);
}

/// The part's two terminals, the one that lies nearer to a point first.
std::pair<std::string, std::string> terminalsFrom(const Part& part, GridPoint at) {
    const auto terminals = kindOf(part).terminals(part);
    const auto distance = [&](const TerminalSpec& terminal) {
        return stepsBetween(at, part.at + turned(part, terminal.at));
    };
    const bool keeps = distance(terminals[0]) <= distance(terminals[1]);
    return keeps ? std::pair(terminals[0].name, terminals[1].name)
                 : std::pair(terminals[1].name, terminals[0].name);
}

/// The two wires of a part that only joins them.
std::optional<std::pair<WireId, WireId>> joinedWires(const Circuit& circuit, const PartId& id) {
    const Part& part = circuit.parts.at(id);
    const Features features = kindOf(part).features(part);
    const auto terminals = kindOf(part).terminals(part);
    const bool isSplice = terminals.size() == 1 && features.fitting == Fitting::Splice;
    const bool joins = terminals.size() == 2 && features.loads.empty() && features.coils.empty() &&
                       std::any_of(features.paths.begin(), features.paths.end(),
                                   [](const CurrentPath& path) { return path.joins; });
    std::vector<WireId> ends;
    std::vector<std::string> taken;
    for (const auto& [wireId, wire] : circuit.wires) {
        if (wire.from.part == id || wire.to.part == id) {
            ends.push_back(wireId);
            taken.push_back(wire.from.part == id ? wire.from.terminal : wire.to.terminal);
        }
    }
    const bool inLine = ends.size() == 2 && (isSplice || (joins && taken[0] != taken[1]));
    return inLine ? std::optional(std::pair(ends[0], ends[1])) : std::nullopt;
}

} // namespace

std::optional<CutPlace> cutPlace(const LinePicture& line, const QPointF& at) {
    int total = 0;
    for (std::size_t i = 0; i + 1 < line.corners.size(); ++i) {
        total += stepsBetween(line.corners[i], line.corners[i + 1]);
    }
    std::optional<CutPlace> best;
    double least = std::numeric_limits<double>::infinity();
    int before = 0;
    for (std::size_t i = 0; i + 1 < line.corners.size(); ++i) {
        const GridPoint step = stepFrom(line.corners[i], line.corners[i + 1]);
        const int steps = stepsBetween(line.corners[i], line.corners[i + 1]);
        GridPoint point = line.corners[i];
        for (int k = 0; k <= steps; ++k, point = point + step) {
            const double distance = QLineF(scenePoint(point), at).length();
            const bool isEnd = before + k == 0 || before + k == total;
            if (!isEnd && distance < least) {
                least = distance;
                best = CutPlace{point, i, static_cast<double>(before + k) / total, step};
            }
        }
        before += steps;
    }
    return best;
}

Addition branching(const Circuit& circuit, const WireId& id, const CutPlace& place, Wire branch) {
    Surgery surgery(circuit);
    const Wire& wire = circuit.wires.at(id);
    const PartId splice = surgery.addPart(newPart(*findPartKind("splice"), {}, place.at), place.at);
    const End meeting{splice, "1"};
    cut(surgery, id, wire, place, meeting, meeting);
    branch.to = meeting;
    surgery.add(joining(surgery.circuit(), std::move(branch)));
    return surgery.named(EditNames::tr("Splice into %1").arg(referenceText(wire.reference)));
}

Addition branching(const Circuit& circuit, const HoseId& id, const CutPlace& place, Hose branch) {
    Surgery surgery(circuit);
    const Hose& hose = circuit.hoses.at(id);
    Part prototype = newPart(*findPartKind("tee"), {}, place.at);
    const GridPoint along = place.direction;
    prototype.quarterTurns = along.x > 0 ? 0 : along.y > 0 ? 1 : along.x < 0 ? 2 : 3;
    const PartId tee = surgery.addPart(prototype, place.at);
    cut(surgery, id, hose, place, {tee, "a"}, {tee, "b"});
    branch.to = {tee, "c"};
    surgery.add(joining(surgery.circuit(), std::move(branch)));
    return surgery.named(EditNames::tr("Tee into %1").arg(referenceText(hose.reference)));
}

bool fitsIntoWire(const Part& prototype) {
    const PartKind& kind = kindOf(prototype);
    const auto terminals = kind.terminals(prototype);
    const Features features = kind.features(prototype);
    return terminals.size() == 2 && !features.source && !features.paths.empty();
}

Addition inserting(const Circuit& circuit, const Part& prototype, GridPoint at, const WireId& id,
                   const CutPlace& place) {
    Surgery surgery(circuit);
    const Wire& wire = circuit.wires.at(id);
    const PartId part = surgery.addPart(prototype, at);
    const Part& placed = surgery.circuit().parts.at(part);
    const GridPoint far{-1000 * place.direction.x, -1000 * place.direction.y};
    const auto [first, second] = terminalsFrom(placed, at + far);
    const std::string reference = placed.reference;
    cut(surgery, id, wire, place, {part, first}, {part, second});
    return surgery.named(
        EditNames::tr("Insert %1 into %2").arg(referenceText(reference), referenceText(wire.reference)));
}

std::optional<Edit> healingRemoval(const Circuit& circuit, const PartId& id) {
    const auto wires = joinedWires(circuit, id);
    if (!wires) {
        return std::nullopt;
    }
    const Wire& one = circuit.wires.at(wires->first);
    const Wire& other = circuit.wires.at(wires->second);
    Wire whole = one;
    whole.from = one.from.part == id ? one.to : one.from;
    whole.to = other.from.part == id ? other.to : other.from;
    if (whole.from == whole.to) {
        return std::nullopt;
    }
    whole.length_m = one.length_m + other.length_m;
    whole.area_m2 = std::min(one.area_m2, other.area_m2);
    whole.bends.clear();
    whole.labelFrom.reset();
    Edit edit = removalOfPart(circuit, id);
    edit.name = EditNames::tr("Delete %1").arg(referenceText(circuit.parts.at(id).reference)).toStdString();
    edit.changes.push_back(putWire(wires->first, std::move(whole)));
    return edit;
}

} // namespace pumpwright
