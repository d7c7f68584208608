#include "core/files/circuit_decode.h"
#include "core/parts/document_fields.h"

#include <algorithm>

namespace pumpwright {
namespace {

Press decodedPress(ObjectReader object) {
    Press press;
    press.at_s = object.number(field::kAtTime);
    press.hold_s = object.number(field::kPressHold);
    press.force_N = object.number(field::kPressForce);
    press.rise_s = object.number(field::kPressRise);
    press.unknown = object.unknownKeys();
    return press;
}

SwitchMove decodedMove(ObjectReader object) {
    SwitchMove move;
    move.at_s = object.number(field::kAtTime);
    move.part = {object.id("part")};
    move.on = object.flag("on", true);
    move.unknown = object.unknownKeys();
    return move;
}

ChargingSpan decodedSpan(ObjectReader object) {
    ChargingSpan span;
    span.from_s = object.number(field::kFromTime);
    span.to_s = object.number(field::kToTime);
    if (span.to_s < span.from_s) {
        object.refuse(ErrorCode::OutOfRange, "to_s",
                      "The charging ends before it begins. Swap the two times.");
    }
    span.unknown = object.unknownKeys();
    return span;
}

AltitudePoint decodedAltitude(ObjectReader object) {
    AltitudePoint point;
    point.at_s = object.number(field::kAtTime);
    point.altitude_m = object.number(field::kAltitude);
    point.unknown = object.unknownKeys();
    return point;
}

/// The elements of a list in order of the time `time`; those at the same time in the order of the file.
template <class Element>
std::vector<Element> decodedList(ObjectReader& plan, std::string_view key, Element (*decodeOne)(ObjectReader),
                                 double Element::*time) {
    std::vector<Element> list;
    plan.forEach(key, [&](const OrderedJson& value, const std::string& pointer) {
        list.push_back(decodeOne(ObjectReader(value, pointer, plan.fault())));
    });
    std::stable_sort(list.begin(), list.end(),
                     [&](const Element& a, const Element& b) { return a.*time < b.*time; });
    return list;
}

} // namespace

DrivePlan decodedPlan(const OrderedJson& value, const std::string& pointer, ReadFault& fault) {
    ObjectReader object(value, pointer, fault);
    DrivePlan plan;
    plan.name = object.text("name", plan.name);
    plan.duration_s = object.number(field::kPlanDuration);
    plan.ambient_K = object.number(field::kPlanAmbient);
    plan.initialVacuum_Pa = object.number(field::kInitialVacuum);
    plan.startsSteady = object.flag("startsSteady", plan.startsSteady);
    plan.presses = decodedList(object, "presses", decodedPress, &Press::at_s);
    plan.switchMoves = decodedList(object, "switchMoves", decodedMove, &SwitchMove::at_s);
    plan.charging = decodedList(object, "charging", decodedSpan, &ChargingSpan::from_s);
    plan.altitude = decodedList(object, "altitude", decodedAltitude, &AltitudePoint::at_s);
    plan.unknown = object.unknownKeys();
    return plan;
}

TitleBlock decodedTitle(const OrderedJson& value, const std::string& pointer, ReadFault& fault) {
    ObjectReader object(value, pointer, fault);
    TitleBlock title;
    title.title = object.text("title");
    title.vehicle = object.text("vehicle");
    title.owner = object.text("owner");
    title.identification = object.text("identification");
    title.revision = object.text("revision");
    title.date = object.text("date");
    title.creator = object.text("creator");
    title.approver = object.text("approver");
    title.unknown = object.unknownKeys();
    return title;
}

ProjectLimits decodedLimits(const OrderedJson& value, const std::string& pointer, ReadFault& fault) {
    ObjectReader object(value, pointer, fault);
    ProjectLimits limits;
    limits.ambient_K = object.number(field::kLimitAmbient);
    limits.voltageDropShare = object.number(field::kVoltageDropShare);
    limits.continuousFuseShare = object.number(field::kContinuousFuseShare);
    limits.leastBundled = object.integer("leastBundled", limits.leastBundled, 1, field::kMostBundled);
    limits.lowestSupply_V = object.number(field::kLowestSupply);
    limits.parked_s = object.number(field::kParked);
    limits.drivenPerYear_s = object.number(field::kDrivenPerYear);
    limits.reservePresses = object.integer("reservePresses", limits.reservePresses, 0, field::kMostReserve);
    limits.unknown = object.unknownKeys();
    return limits;
}

Waiver decodedWaiver(const OrderedJson& value, const std::string& pointer, ReadFault& fault) {
    ObjectReader object(value, pointer, fault);
    Waiver waiver;
    waiver.rule = object.textOf("rule");
    object.forEach("subjects", [&](const OrderedJson& subject, const std::string& subjectPointer) {
        if (subject.is_string()) {
            waiver.subjects.push_back(subject.get<std::string>());
        } else {
            fault.refuse(ErrorCode::WrongType, subjectPointer,
                         "A subject is the id of a part, wire or hose.");
        }
    });
    std::sort(waiver.subjects.begin(), waiver.subjects.end());
    waiver.reason = object.text("reason");
    waiver.initials = object.text("initials");
    waiver.value = object.number(field::kWaivedValue);
    waiver.unknown = object.unknownKeys();
    return waiver;
}

} // namespace pumpwright
