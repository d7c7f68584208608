#include "core/sheet/object_fields.h"

#include "core/parts/part_kind.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

ObjectField number(std::string_view label, double si, QuantityKind kind) {
    return {std::string(label), formatQuantity(si, kind), si, kind};
}

ObjectField words(std::string_view label, std::string text) {
    return {std::string(label), std::move(text), std::nullopt};
}

/// "K1:86"
std::string endText(const Circuit& circuit, const End& end) {
    const auto part = circuit.parts.find(end.part);
    return fmt::format("{}:{}", part == circuit.parts.end() ? end.part.text : part->second.reference,
                       end.terminal);
}

ObjectField price(const Circuit& circuit, std::string_view label, double amount) {
    return {std::string(label),
            fmt::format("{} {}", formatQuantity(amount, QuantityKind::Money), circuit.currency), amount,
            QuantityKind::Money};
}

std::string seconds(double time_s) {
    return formatQuantity(time_s, QuantityKind::Time);
}

void addTimed(ObjectFields& fields, const DrivePlan& plan, const Circuit& circuit) {
    int count = 0;
    for (const Press& press : plan.presses) {
        fields.push_back(words(fmt::format("Press {}", ++count),
                               fmt::format("at {}, {}, held {}, rising {}", seconds(press.at_s),
                                           formatQuantity(press.force_N, QuantityKind::Force),
                                           seconds(press.hold_s), seconds(press.rise_s))));
    }
    count = 0;
    for (const SwitchMove& move : plan.switchMoves) {
        const auto part = circuit.parts.find(move.part);
        fields.push_back(
            words(fmt::format("Switch move {}", ++count),
                  fmt::format("at {}, {} {}", seconds(move.at_s),
                              part == circuit.parts.end() ? move.part.text : part->second.reference,
                              move.on ? "on" : "off")));
    }
    count = 0;
    for (const ChargingSpan& span : plan.charging) {
        fields.push_back(words(fmt::format("Charging {}", ++count),
                               fmt::format("{} to {}", seconds(span.from_s), seconds(span.to_s))));
    }
    count = 0;
    for (const AltitudePoint& point : plan.altitude) {
        fields.push_back(words(fmt::format("Altitude {}", ++count),
                               fmt::format("at {}, {}", seconds(point.at_s),
                                           formatQuantity(point.altitude_m, QuantityKind::Length, "m"))));
    }
}

} // namespace

ObjectFields fieldsOf(const Circuit& circuit, const Part& part) {
    const PartKind& kind = kindOf(part);
    ObjectFields fields{words("Kind", std::string(kind.title())), words("Label", part.label),
                        words("Catalogue entry", part.catalogue)};
    for (const ParameterSpec& parameter : kind.parameters()) {
        fields.push_back(number(parameter.label, kind.value(part, parameter.key), parameter.kind));
    }
    for (const ChoiceSpec& choice : kind.choices()) {
        const std::string_view chosen = kind.choice(part, choice.key);
        for (const ChoiceSpec::Option& option : choice.options) {
            if (option.id == chosen) {
                fields.push_back(words(choice.label, std::string(option.label)));
            }
        }
    }
    fields.push_back(price(circuit, "Price", part.price));
    fields.push_back(words("Values from", part.note));
    return fields;
}

ObjectFields fieldsOf(const Circuit& circuit, const Wire& wire) {
    return {words("From", endText(circuit, wire.from)),
            words("To", endText(circuit, wire.to)),
            words("Colour", wire.colour),
            number("Size", wire.area_m2, QuantityKind::WireArea),
            number("Length", wire.length_m, QuantityKind::Length),
            words("Insulation", wire.insulation),
            number("Wires in its bundle", wire.bundled, QuantityKind::Number),
            price(circuit, "Price of a metre", wire.price_perMetre)};
}

ObjectFields fieldsOf(const Circuit& circuit, const Hose& hose) {
    return {words("From", endText(circuit, hose.from)), words("To", endText(circuit, hose.to)),
            number("Inner diameter", hose.innerDiameter_m, QuantityKind::Length),
            number("Length", hose.length_m, QuantityKind::Length),
            price(circuit, "Price of a metre", hose.price_perMetre)};
}

ObjectFields fieldsOf(const DrivePlan& plan, const Circuit& circuit) {
    ObjectFields fields{words("Name", plan.name), number("Duration", plan.duration_s, QuantityKind::Time),
                        number("Ambient temperature", plan.ambient_K, QuantityKind::Temperature),
                        number("Vacuum at the start", plan.initialVacuum_Pa, QuantityKind::GaugeVacuum),
                        words("Begins", plan.startsSteady ? "steady, as after ten minutes" : "at rest")};
    addTimed(fields, plan, circuit);
    return fields;
}

ObjectFields fieldsOf(const ProjectLimits& limits) {
    return {number("Where wires lie", limits.ambient_K, QuantityKind::Temperature),
            number("Voltage drop allowed", limits.voltageDropShare, QuantityKind::Share),
            number("Fuse load allowed for long", limits.continuousFuseShare, QuantityKind::Share)};
}

ObjectFields fieldsOf(const TitleBlock& title) {
    return {words("Title", title.title),       words("Vehicle", title.vehicle),
            words("Legal owner", title.owner), words("Identification number", title.identification),
            words("Revision", title.revision), words("Date of issue", title.date),
            words("Creator", title.creator),   words("Approved by", title.approver)};
}

} // namespace pumpwright
