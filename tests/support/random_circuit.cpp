#include "tests/support/random_circuit.h"

#include "core/parts/conductor.h"
#include "core/parts/document_fields.h"
#include "core/parts/place.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <string_view>

namespace pumpwright {
namespace {

/// Texts that some output might take for more than text.
constexpr std::array<std::string_view, 14> kTexts{
    "",
    "K1",
    "pump relay",
    "Pumpe hinten links, 0,75 mm²",
    "<b>bold</b> & <script>",
    "100 % %s %n ${HOME} $(ls)",
    "../../etc/passwd",
    "=1+1|cmd",
    "\"quoted\" \\ back / slash ~ tilde",
    "line\nbreak\ttab\r\x01",
    "\u202Ereversed\u202C",
    "\U0001F697\U0001F50B",
    "真空ポンプ",
    "-0",
};

/// Drawn from what is there already, so that a seed gives the circuit that it always gave.
LabelOffset labelBy(GridPoint place) {
    constexpr int kMost = field::kFarthestLabel_mm + 1;
    return {place.x % kMost, place.y % kMost};
}

const std::vector<TerminalSpec> endsOf(const Part& part, bool vacuum) {
    const PartKind& kind = kindOf(part);
    return vacuum ? kind.ports(part) : kind.terminals(part);
}

bool hasEnds(const Circuit& circuit, bool vacuum) {
    return std::any_of(circuit.parts.begin(), circuit.parts.end(),
                       [&](const auto& one) { return !endsOf(one.second, vacuum).empty(); });
}

} // namespace

double RandomCircuits::valueOf(const ParameterSpec& spec) {
    const double share = m_draws.share();
    switch (below(5)) {
    case 0:
        return spec.low;
    case 1:
        return spec.high;
    case 2:
        return spec.standard;
    case 3:
        if (spec.low > 0) {
            const double spread = spec.low * std::pow(spec.high / spec.low, share);
            return std::clamp(spread, spec.low, spec.high);
        }
        [[fallthrough]];
    default:
        return std::clamp(spec.low + share * (spec.high - spec.low), spec.low, spec.high);
    }
}

std::string RandomCircuits::text() {
    std::string text(kTexts[static_cast<std::size_t>(below(static_cast<int>(kTexts.size())))]);
    return chance(5) ? text + std::string(static_cast<std::size_t>(below(4000)), 'x') : text;
}

UnknownKeys RandomCircuits::unknown() {
    static const std::array<std::string, 6> values{
        "null", "true", "[]", "{\"a\":[1,2.5,{\"z\":1,\"a\":2}]}", "\"text \\\"quoted\\\"\"", "-12.75"};
    UnknownKeys unknown;
    for (int count = chance(80) ? 0 : below(3); count > 0; --count) {
        unknown["later" + std::to_string(below(5))] = values[static_cast<std::size_t>(below(6))];
    }
    return unknown;
}

std::string RandomCircuits::textOf(std::span<const std::string_view> codes) {
    return chance(50) ? std::string()
                      : std::string(codes[static_cast<std::size_t>(below(static_cast<int>(codes.size())))]);
}

template <class Map>
const typename Map::value_type& RandomCircuits::oneOf(const Map& map) {
    return *std::next(map.begin(), below(static_cast<int>(map.size())));
}

Part RandomCircuits::part(int number) {
    const auto kinds = partKinds();
    const PartKind& kind = *kinds[static_cast<std::size_t>(below(static_cast<int>(kinds.size())))];
    Part part = newPart(kind, std::string(kind.letter()) + std::to_string(number), place());
    part.label = text();
    part.note = text();
    part.catalogue = chance(30) ? "some-entry" : "";
    part.price = chance(50) ? valueOf(field::kPrice) : 0;
    part.place = textOf(placeIds());
    part.ingress = textOf(ingressCodes());
    part.ratedTemperature_K = valueOf(field::kRatedTemperature);
    part.quarterTurns = below(4);
    part.mirrored = chance(30);
    if (part.mirrored) {
        part.labelFrom = labelBy(part.at);
    }
    for (const ParameterSpec& spec : kind.parameters()) {
        if (chance(50)) {
            part.values[std::string(spec.key)] = valueOf(spec);
        }
        if (chance(20)) {
            part.tolerances[std::string(spec.key)] = {static_cast<ToleranceSort>(below(3)),
                                                      valueOf(field::kToleranceShare)};
        }
    }
    for (const ChoiceSpec& spec : kind.choices()) {
        if (chance(50)) {
            const int option = below(static_cast<int>(spec.options.size()));
            part.choices[std::string(spec.key)] =
                std::string(spec.options[static_cast<std::size_t>(option)].id);
        }
    }
    part.unknown = unknown();
    return part;
}

End RandomCircuits::randomEnd(const Circuit& circuit, bool vacuum) {
    std::vector<const std::pair<const PartId, Part>*> having;
    for (const auto& one : circuit.parts) {
        if (!endsOf(one.second, vacuum).empty()) {
            having.push_back(&one);
        }
    }
    const auto& [id, part] = *having[static_cast<std::size_t>(below(static_cast<int>(having.size())))];
    const auto ends = endsOf(part, vacuum);
    return {id, ends[static_cast<std::size_t>(below(static_cast<int>(ends.size())))].name};
}

Wire RandomCircuits::wire(const Circuit& circuit) {
    static const std::array<std::string, 4> colours{"BK", "RD", "GNYE", "RDBU"};
    Wire wire;
    wire.reference = "W" + std::to_string(below(50));
    wire.from = randomEnd(circuit, false);
    wire.to = randomEnd(circuit, false);
    wire.colour = colours[static_cast<std::size_t>(below(4))];
    wire.area_m2 = valueOf(field::kWireArea);
    wire.length_m = valueOf(field::kWireLength);
    const auto insulations = insulationClasses();
    wire.insulation =
        std::string(insulations[static_cast<std::size_t>(below(static_cast<int>(insulations.size())))].id);
    wire.bundled = 1 + below(field::kMostBundled);
    wire.sheathed = chance(30);
    wire.price_perMetre = chance(50) ? valueOf(field::kPricePerMetre) : 0;
    for (int bends = below(4); bends > 0; --bends) {
        wire.bends.push_back(place());
    }
    if (!wire.bends.empty()) {
        wire.labelFrom = labelBy(wire.bends.back());
    }
    wire.unknown = unknown();
    return wire;
}

Hose RandomCircuits::hose(const Circuit& circuit) {
    Hose hose;
    hose.leakHole_m = chance(20) ? valueOf(field::kHoseLeak) : 0;
    hose.reference = "H" + std::to_string(below(50));
    hose.from = randomEnd(circuit, true);
    hose.to = randomEnd(circuit, true);
    hose.innerDiameter_m = valueOf(field::kHoseDiameter);
    hose.length_m = valueOf(field::kHoseLength);
    hose.price_perMetre = chance(50) ? valueOf(field::kPricePerMetre) : 0;
    hose.unknown = unknown();
    return hose;
}

DrivePlan RandomCircuits::plan(const Circuit& circuit) {
    DrivePlan plan;
    plan.name = text();
    plan.duration_s = valueOf(field::kPlanDuration);
    plan.ambient_K = valueOf(field::kPlanAmbient);
    plan.initialVacuum_Pa = valueOf(field::kInitialVacuum);
    plan.startsSteady = chance(10);
    double time = 0;
    for (int count = below(5); count > 0; --count) {
        time += below(60);
        plan.presses.push_back({time, valueOf(field::kPressHold), valueOf(field::kPressForce),
                                valueOf(field::kPressRise), unknown()});
        if (!circuit.parts.empty() && chance(50)) {
            plan.switchMoves.push_back({time, oneOf(circuit.parts).first, chance(50), unknown()});
        }
        plan.charging.push_back({time, time + below(60), unknown()});
        plan.altitude.push_back({time, valueOf(field::kAltitude), unknown()});
    }
    plan.unknown = unknown();
    return plan;
}

TitleBlock RandomCircuits::title() {
    return {text(), text(), text(), text(), text(), "2026-03-01", text(), text(), unknown()};
}

ProjectLimits RandomCircuits::limits() {
    ProjectLimits limits;
    limits.ambient_K = valueOf(field::kLimitAmbient);
    limits.voltageDropShare = valueOf(field::kVoltageDropShare);
    limits.continuousFuseShare = valueOf(field::kContinuousFuseShare);
    limits.leastBundled = 1 + below(field::kMostBundled);
    limits.lowestSupply_V = valueOf(field::kLowestSupply);
    limits.parked_s = valueOf(field::kParked);
    limits.drivenPerYear_s = valueOf(field::kDrivenPerYear);
    limits.reservePresses = below(field::kMostReserve + 1);
    limits.unknown = unknown();
    return limits;
}

Waivers RandomCircuits::waivers(const Circuit& circuit) {
    Waivers waivers;
    for (int count = circuit.parts.empty() ? 0 : below(3); count > 0; --count) {
        waivers.push_back(
            {"wire-current", {oneOf(circuit.parts).first.text}, text(), "ab", 0.1 * below(100), unknown()});
    }
    return waivers;
}

Trial RandomCircuits::trial(const Circuit& circuit) {
    Trial trial{text(), edit(circuit), unknown()};
    trial.edit.changes.push_back(replacePlan(plan(circuit)));
    trial.edit.changes.push_back(replaceLimits(limits()));
    trial.edit.changes.push_back(replaceTitle(title()));
    trial.edit.changes.push_back(replaceWaivers(waivers(circuit)));
    return trial;
}

void RandomCircuits::addConnections(Circuit& circuit, int count) {
    const bool electric = hasEnds(circuit, false);
    const bool vacuum = hasEnds(circuit, true);
    for (; count > 0; --count) {
        if (electric) {
            circuit.wires.emplace(freeWireId(circuit), wire(circuit));
        }
        if (vacuum && chance(50)) {
            circuit.hoses.emplace(freeHoseId(circuit), hose(circuit));
        }
    }
}

Circuit RandomCircuits::circuit(int mostParts) {
    Circuit circuit;
    for (int number = below(mostParts + 1); number > 0; --number) {
        circuit.parts.emplace(freePartId(circuit), part(number));
    }
    addConnections(circuit, below(2 * mostParts));
    circuit.title = title();
    circuit.currency = chance(50) ? "EUR" : "SEK";
    circuit.limits = limits();
    circuit.plan = plan(circuit);
    circuit.waivers = waivers(circuit);
    for (int count = below(3); count > 0; --count) {
        circuit.trials.insert_or_assign("trial " + std::to_string(count), trial(circuit));
    }
    circuit.unknown = unknown();
    return circuit;
}

Edit RandomCircuits::edit(const Circuit& circuit) {
    Edit edit{text(), {}};
    switch (below(8)) {
    case 0:
        edit.changes.push_back(putPart(freePartId(circuit), part(99)));
        break;
    case 1:
        if (!circuit.parts.empty()) {
            return removalOfPart(circuit, oneOf(circuit.parts).first);
        }
        break;
    case 2:
        if (hasEnds(circuit, false)) {
            edit.changes.push_back(putWire(freeWireId(circuit), wire(circuit)));
        }
        break;
    case 3:
        if (!circuit.wires.empty()) {
            edit.changes.push_back(takeWire(oneOf(circuit.wires).first));
        }
        break;
    case 4:
        if (hasEnds(circuit, true)) {
            edit.changes.push_back(putHose(freeHoseId(circuit), hose(circuit)));
        }
        break;
    case 5:
        if (!circuit.parts.empty()) {
            auto [id, moved] = oneOf(circuit.parts);
            moved.at = place();
            edit.changes.push_back(putPart(id, std::move(moved)));
        }
        break;
    case 6:
        edit.changes.push_back(chance(50) ? replacePlan(plan(circuit)) : replaceWaivers(waivers(circuit)));
        break;
    default:
        edit.changes.push_back(chance(50) ? replaceTitle(title()) : replaceLimits(limits()));
    }
    return edit;
}

} // namespace pumpwright
