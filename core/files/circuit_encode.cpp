#include "core/files/circuit_encode.h"

#include <nlohmann/json.hpp>

#include <array>
#include <string_view>
#include <type_traits>

namespace pumpwright {
namespace {

using Json = nlohmann::ordered_json;

/// Writes an object key by key; what is empty or has its usual value can be left out.
class ObjectWriter {
public:
    ObjectWriter& put(const char* key, Json value) {
        m_object[key] = std::move(value);
        return *this;
    }
    template <class Value>
    ObjectWriter& putUnless(const Value& usual, const char* key, const Value& value) {
        if (!(value == usual)) {
            m_object[key] = value;
        }
        return *this;
    }
    ObjectWriter& putText(const char* key, const std::string& text) {
        return putUnless(std::string(), key, text);
    }
    ObjectWriter& putList(const char* key, Json list) {
        if (!list.empty()) {
            m_object[key] = std::move(list);
        }
        return *this;
    }
    ObjectWriter& putLabel(const std::optional<LabelOffset>& from) {
        return from ? put("labelFrom_mm", Json::array({from->x_mm, from->y_mm})) : *this;
    }
    /// Keys kept from the file that a newer version wrote. One that is known by now is not written twice.
    Json finish(const UnknownKeys& unknown) {
        for (const auto& [key, text] : unknown) {
            Json value = Json::parse(text, nullptr, false);
            if (!value.is_discarded() && !m_object.contains(key)) {
                m_object[key] = std::move(value);
            }
        }
        return std::move(m_object);
    }

private:
    Json m_object = Json::object();
};

template <class List, class EncodeOne>
Json encodedList(const List& list, EncodeOne encodeOne) {
    Json encoded = Json::array();
    for (const auto& one : list) {
        encoded.push_back(encodeOne(one));
    }
    return encoded;
}

template <class Map, class EncodeOne>
Json encodedById(const Map& map, EncodeOne encodeOne) {
    return encodedList(map, [&](const auto& one) { return encodeOne(one.first, one.second); });
}

Json encodedPoint(const GridPoint& point) {
    return Json::array({point.x, point.y});
}

Json encodedEnd(const End& end) {
    return ObjectWriter().put("part", end.part.text).put("terminal", end.terminal).finish({});
}

Json encodedTolerances(const std::map<std::string, Tolerance>& tolerances) {
    constexpr std::array kSorts{"uniform", "normal", "limits"}; // as in the enum
    Json encoded = Json::object();
    for (const auto& [key, tolerance] : tolerances) {
        encoded[key] = ObjectWriter()
                           .put("sort", kSorts.at(static_cast<std::size_t>(tolerance.sort)))
                           .put("share", tolerance.share)
                           .finish({});
    }
    return encoded;
}

Json encodedPart(const PartId& id, const Part& part) {
    return ObjectWriter()
        .put("id", id.text)
        .put("kind", part.kind)
        .put("reference", part.reference)
        .putText("label", part.label)
        .putText("catalogue", part.catalogue)
        .putText("note", part.note)
        .putUnless(0.0, "price", part.price)
        .putText("place", part.place)
        .putText("ingress", part.ingress)
        .putUnless(Part().ratedTemperature_K, "ratedTemperature_K", part.ratedTemperature_K)
        .put("at", encodedPoint(part.at))
        .putUnless(0, "quarterTurns", part.quarterTurns)
        .putUnless(false, "mirrored", part.mirrored)
        .putLabel(part.labelFrom)
        .putUnless({}, "values", part.values)
        .putUnless({}, "choices", part.choices)
        .putList("tolerances", encodedTolerances(part.tolerances))
        .finish(part.unknown);
}

Json encodedWire(const WireId& id, const Wire& wire) {
    return ObjectWriter()
        .put("id", id.text)
        .put("reference", wire.reference)
        .put("from", encodedEnd(wire.from))
        .put("to", encodedEnd(wire.to))
        .put("colour", wire.colour)
        .put("area_m2", wire.area_m2)
        .put("length_m", wire.length_m)
        .put("insulation", wire.insulation)
        .putUnless(1, "bundled", wire.bundled)
        .putUnless(false, "sheathed", wire.sheathed)
        .putUnless(0.0, "price_perMetre", wire.price_perMetre)
        .putList("bends", encodedList(wire.bends, encodedPoint))
        .putLabel(wire.labelFrom)
        .finish(wire.unknown);
}

Json encodedHose(const HoseId& id, const Hose& hose) {
    return ObjectWriter()
        .put("id", id.text)
        .put("reference", hose.reference)
        .put("from", encodedEnd(hose.from))
        .put("to", encodedEnd(hose.to))
        .put("innerDiameter_m", hose.innerDiameter_m)
        .put("length_m", hose.length_m)
        .putUnless(0.0, "leakHole_m", hose.leakHole_m)
        .putUnless(0.0, "price_perMetre", hose.price_perMetre)
        .putList("bends", encodedList(hose.bends, encodedPoint))
        .putLabel(hose.labelFrom)
        .finish(hose.unknown);
}

Json encodedTitle(const TitleBlock& title) {
    return ObjectWriter()
        .putText("title", title.title)
        .putText("vehicle", title.vehicle)
        .putText("owner", title.owner)
        .putText("identification", title.identification)
        .putText("revision", title.revision)
        .putText("date", title.date)
        .putText("creator", title.creator)
        .putText("approver", title.approver)
        .finish(title.unknown);
}

Json encodedLimits(const ProjectLimits& limits) {
    const ProjectLimits usual = ProjectLimits();
    return ObjectWriter()
        .put("ambient_K", limits.ambient_K)
        .put("voltageDropShare", limits.voltageDropShare)
        .put("continuousFuseShare", limits.continuousFuseShare)
        .putUnless(usual.leastBundled, "leastBundled", limits.leastBundled)
        .putUnless(usual.lowestSupply_V, "lowestSupply_V", limits.lowestSupply_V)
        .putUnless(usual.parked_s, "parked_s", limits.parked_s)
        .putUnless(usual.drivenPerYear_s, "drivenPerYear_s", limits.drivenPerYear_s)
        .putUnless(usual.reservePresses, "reservePresses", limits.reservePresses)
        .finish(limits.unknown);
}

Json encodedPress(const Press& press) {
    return ObjectWriter()
        .put("at_s", press.at_s)
        .put("hold_s", press.hold_s)
        .put("force_N", press.force_N)
        .put("rise_s", press.rise_s)
        .finish(press.unknown);
}

Json encodedMove(const SwitchMove& move) {
    return ObjectWriter()
        .put("at_s", move.at_s)
        .put("part", move.part.text)
        .put("on", move.on)
        .finish(move.unknown);
}

Json encodedSpan(const ChargingSpan& span) {
    return ObjectWriter().put("from_s", span.from_s).put("to_s", span.to_s).finish(span.unknown);
}

Json encodedAltitude(const AltitudePoint& point) {
    return ObjectWriter().put("at_s", point.at_s).put("altitude_m", point.altitude_m).finish(point.unknown);
}

Json encodedPlan(const DrivePlan& plan) {
    return ObjectWriter()
        .put("name", plan.name)
        .put("duration_s", plan.duration_s)
        .put("ambient_K", plan.ambient_K)
        .put("initialVacuum_Pa", plan.initialVacuum_Pa)
        .putUnless(false, "startsSteady", plan.startsSteady)
        .putList("presses", encodedList(plan.presses, encodedPress))
        .putList("switchMoves", encodedList(plan.switchMoves, encodedMove))
        .putList("charging", encodedList(plan.charging, encodedSpan))
        .putList("altitude", encodedList(plan.altitude, encodedAltitude))
        .finish(plan.unknown);
}

Json encodedWaiver(const Waiver& waiver) {
    return ObjectWriter()
        .put("rule", waiver.rule)
        .put("subjects", waiver.subjects)
        .put("reason", waiver.reason)
        .putText("initials", waiver.initials)
        .put("value", waiver.value)
        .finish(waiver.unknown);
}

Json encodedTrial(const std::string& id, const Trial& trial);

/// A change as an object with one key, which says what is done.
struct ChangeEncoder {
    Json operator()(const Put<PartId, Part>& put) const {
        return encoded("Part", put.id.text, put, encodedPart);
    }
    Json operator()(const Put<WireId, Wire>& put) const {
        return encoded("Wire", put.id.text, put, encodedWire);
    }
    Json operator()(const Put<HoseId, Hose>& put) const {
        return encoded("Hose", put.id.text, put, encodedHose);
    }
    Json operator()(const Put<std::string, Trial>& put) const {
        return encoded("Trial", put.id, put, encodedTrial);
    }
    Json operator()(const Replace<DrivePlan>& replace) const {
        return {{"replacePlan", encodedPlan(*replace.section)}};
    }
    Json operator()(const Replace<TitleBlock>& replace) const {
        return {{"replaceTitle", encodedTitle(*replace.section)}};
    }
    Json operator()(const Replace<ProjectLimits>& replace) const {
        return {{"replaceLimits", encodedLimits(*replace.section)}};
    }
    Json operator()(const Replace<Waivers>& replace) const {
        return {{"replaceWaivers", encodedList(*replace.section, encodedWaiver)}};
    }

private:
    template <class Change, class EncodeOne>
    static Json encoded(const std::string& sort, const std::string& id, const Change& put,
                        EncodeOne encodeOne) {
        if (put.object) {
            return {{"put" + sort, encodeOne(put.id, *put.object)}};
        }
        return {{"take" + sort, id}};
    }
};

Json encodedTrial(const std::string& id, const Trial& trial) {
    return ObjectWriter()
        .put("id", id)
        .put("name", trial.name)
        .putUnless(trial.name, "editName", trial.edit.name)
        .put("changes", encodedList(trial.edit.changes,
                                    [](const Change& change) { return std::visit(ChangeEncoder{}, change); }))
        .finish(trial.unknown);
}

} // namespace

Json encodedCircuit(const Circuit& circuit) {
    return ObjectWriter()
        .put("pumpwright", 1)
        .put("title", encodedTitle(circuit.title))
        .put("currency", circuit.currency)
        .put("limits", encodedLimits(circuit.limits))
        .put("parts", encodedById(circuit.parts, encodedPart))
        .put("wires", encodedById(circuit.wires, encodedWire))
        .put("hoses", encodedById(circuit.hoses, encodedHose))
        .put("plan", encodedPlan(circuit.plan))
        .putList("trials", encodedById(circuit.trials, encodedTrial))
        .putList("waivers", encodedList(circuit.waivers, encodedWaiver))
        .finish(circuit.unknown);
}

Json encodedFragment(const Circuit& circuit) {
    const auto isInside = [&](const auto& connection) {
        return circuit.parts.contains(connection.from.part) && circuit.parts.contains(connection.to.part);
    };
    auto wires = circuit.wires;
    std::erase_if(wires, [&](const auto& one) { return !isInside(one.second); });
    auto hoses = circuit.hoses;
    std::erase_if(hoses, [&](const auto& one) { return !isInside(one.second); });
    return ObjectWriter()
        .put("pumpwright", 1)
        .put("parts", encodedById(circuit.parts, encodedPart))
        .put("wires", encodedById(wires, encodedWire))
        .put("hoses", encodedById(hoses, encodedHose))
        .finish({});
}

} // namespace pumpwright
