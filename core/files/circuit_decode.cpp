#include "core/files/circuit_decode.h"

#include "core/units/money.h"
#include "core/units/quoted_text.h"

#include <fmt/core.h>
#include <fmt/ranges.h>

#include <algorithm>

namespace pumpwright {
namespace {

constexpr int kFormatVersion = 1; // stored: do not renumber

bool isReadableVersion(ObjectReader& object) {
    const OrderedJson* version = object.member("pumpwright");
    if (!version) {
        object.fault().refuse(ErrorCode::NotACircuit, object.pointer(),
                              "This is JSON but no circuit: the key \"pumpwright\" is missing.");
        return false;
    }
    const double number = version->is_number_integer() ? version->get<double>() : 0;
    if (number < 1) {
        object.refuse(ErrorCode::NotACircuit, "pumpwright",
                      fmt::format("The format's version must be {}, not {}.", kFormatVersion,
                                  quotedText(version->dump(-1, ' ', true))));
        return false;
    }
    if (number > kFormatVersion) {
        object.refuse(
            ErrorCode::NewerVersion, "pumpwright",
            fmt::format("The file has format {}, made by a newer version of this program; this one reads "
                        "up to format {}. Open it with a newer version.",
                        version->dump(), kFormatVersion));
        return false;
    }
    return true;
}

/// Which terminals and ports each part has, asked once for each part.
class EndCheck {
public:
    EndCheck(const Circuit& circuit, ReadFault& fault) : m_fault(fault) {
        for (const auto& [id, part] : circuit.parts) {
            const PartKind* kind = findPartKind(part.kind);
            if (kind) {
                m_parts.emplace(id, PartEnds{&part, names(kind->terminals(part)), names(kind->ports(part))});
            }
        }
    }

    void checkWire(const Wire& wire, const std::string& pointer) const {
        check(wire.from, &PartEnds::terminals, "terminal", pointer + "/from");
        check(wire.to, &PartEnds::terminals, "terminal", pointer + "/to");
    }
    void checkHose(const Hose& hose, const std::string& pointer) const {
        check(hose.from, &PartEnds::ports, "port", pointer + "/from");
        check(hose.to, &PartEnds::ports, "port", pointer + "/to");
    }
    void checkMove(const SwitchMove& move, const std::string& pointer) const {
        if (!m_parts.contains(move.part)) {
            refusePart(move.part, pointer + "/part");
        }
    }

private:
    struct PartEnds {
        const Part* part;
        std::vector<std::string> terminals;
        std::vector<std::string> ports;
    };

    static std::vector<std::string> names(const std::vector<TerminalSpec>& specs) {
        std::vector<std::string> names;
        for (const TerminalSpec& spec : specs) {
            names.push_back(spec.name);
        }
        return names;
    }

    void check(const End& end, std::vector<std::string> PartEnds::*ends, std::string_view sort,
               const std::string& pointer) const {
        const auto found = m_parts.find(end.part);
        if (found == m_parts.end()) {
            refusePart(end.part, pointer + "/part");
            return;
        }
        const auto& known = found->second.*ends;
        if (std::find(known.begin(), known.end(), end.terminal) == known.end()) {
            const Part& part = *found->second.part;
            m_fault.refuse(ErrorCode::DanglingReference, pointer + "/terminal",
                           fmt::format("{} ({}) has no {} {}. It has: {}.", quotedText(part.reference),
                                       part.kind, sort, quotedText(end.terminal),
                                       known.empty() ? "none" : fmt::format("{}", fmt::join(known, ", "))));
        }
    }

    void refusePart(const PartId& id, const std::string& pointer) const {
        m_fault.refuse(ErrorCode::DanglingReference, pointer,
                       fmt::format("There is no part with the id {}.", quotedText(id.text)));
    }

    ReadFault& m_fault;
    std::map<PartId, PartEnds> m_parts;
};

/// Reads a list of connections by id and checks the ends of each where it stands in the file.
template <class Map, class ReadOne, class Check>
Map decodedConnections(ObjectReader& object, std::string_view key, ReadOne readOne, Check check) {
    return decodedById<Map>(object, key,
                            [&](const OrderedJson& value, const std::string& pointer, ReadFault& fault) {
                                auto one = readOne(value, pointer, fault);
                                check(one.second, pointer);
                                return one;
                            });
}

std::string decodedCurrency(ObjectReader& object, const std::string& fallback) {
    std::string currency = object.text("currency", fallback);
    if (!isCurrencyCode(currency)) {
        object.refuse(ErrorCode::UnknownChoice, "currency",
                      fmt::format("{} is no currency code. Give three capital letters, as in \"EUR\".",
                                  quotedText(currency)));
    }
    return currency;
}

/// The file's own list is not sorted yet, so the pointer has the index that the move has there.
void checkMoves(const OrderedJson& tree, const EndCheck& ends, ReadFault& fault) {
    ObjectReader root(tree, {}, fault);
    ObjectReader plan = root.object("plan");
    plan.forEach("switchMoves", [&](const OrderedJson& value, const std::string& pointer) {
        ObjectReader move(value, pointer, fault);
        ends.checkMove({0, {move.id("part")}}, pointer);
    });
}

} // namespace

Circuit decodedCircuit(const OrderedJson& tree, ReadFault& fault) {
    ObjectReader object(tree, {}, fault);
    if (!tree.is_object()) {
        return {};
    }
    if (!isReadableVersion(object)) {
        return {};
    }
    Circuit circuit;
    const auto section = [&](std::string_view key) -> const OrderedJson& {
        static const OrderedJson empty = OrderedJson::object();
        const OrderedJson* value = object.member(key);
        return value ? *value : empty;
    };
    circuit.title = decodedTitle(section("title"), "/title", fault);
    circuit.currency = decodedCurrency(object, circuit.currency);
    circuit.limits = decodedLimits(section("limits"), "/limits", fault);
    circuit.parts = decodedById<std::map<PartId, Part>>(object, "parts", decodedPart);
    const EndCheck ends(circuit, fault);
    circuit.wires = decodedConnections<std::map<WireId, Wire>>(
        object, "wires", decodedWire,
        [&](const Wire& wire, const std::string& pointer) { ends.checkWire(wire, pointer); });
    circuit.hoses = decodedConnections<std::map<HoseId, Hose>>(
        object, "hoses", decodedHose,
        [&](const Hose& hose, const std::string& pointer) { ends.checkHose(hose, pointer); });
    circuit.plan = decodedPlan(section("plan"), "/plan", fault);
    checkMoves(tree, ends, fault);
    circuit.trials = decodedById<std::map<std::string, Trial>>(object, "trials", decodedTrial);
    object.forEach("waivers", [&](const OrderedJson& value, const std::string& pointer) {
        circuit.waivers.push_back(decodedWaiver(value, pointer, fault));
    });
    circuit.unknown = object.unknownKeys();
    return circuit;
}

} // namespace pumpwright
