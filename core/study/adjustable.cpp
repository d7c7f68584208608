#include "core/study/adjustable.h"

#include "core/parts/document_fields.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <array>

namespace pumpwright {
namespace {

/// A measure of a wire or hose and where it is kept.
template <class Object>
struct Field {
    const ParameterSpec* spec;
    double Object::*member;
};

constexpr std::array kWireFields{Field<Wire>{&field::kWireArea, &Wire::area_m2},
                                 Field<Wire>{&field::kWireLength, &Wire::length_m}};
constexpr std::array kHoseFields{Field<Hose>{&field::kHoseDiameter, &Hose::innerDiameter_m},
                                 Field<Hose>{&field::kHoseLength, &Hose::length_m},
                                 Field<Hose>{&field::kHoseLeak, &Hose::leakHole_m}};

template <class Object, std::size_t Count>
double Object::*memberOf(const std::array<Field<Object>, Count>& fields, const ParameterSpec* spec) {
    for (const Field<Object>& one : fields) {
        if (one.spec == spec) {
            return one.member;
        }
    }
    return fields.front().member;
}

Adjustable adjustable(Subject subject, const std::string& id, const std::string& reference,
                      const ParameterSpec& spec) {
    const std::string& name = reference.empty() ? id : reference;
    return {subject, id, &spec, fmt::format("{}.{}", name, spec.key), fmt::format("{} {}", name, spec.label)};
}

/// Those of the object whose name stands before the point.
std::string namesLike(const std::vector<Adjustable>& all, std::string_view name) {
    const std::string_view object = name.substr(0, name.find('.'));
    std::vector<std::string_view> names;
    for (const Adjustable& one : all) {
        if (std::string_view(one.name).substr(0, one.name.find('.')) == object) {
            names.push_back(one.name);
        }
    }
    return names.empty() ? fmt::format("There is nothing with the reference \"{}\".", object)
                         : fmt::format("There is: {}.", fmt::join(names, ", "));
}

} // namespace

std::vector<Adjustable> adjustables(const Circuit& circuit) {
    std::vector<Adjustable> all;
    for (const auto& [id, part] : circuit.parts) {
        for (const ParameterSpec& spec : kindOf(part).parameters()) {
            all.push_back(adjustable(Subject::Part, id.text, part.reference, spec));
        }
    }
    for (const auto& [id, wire] : circuit.wires) {
        for (const auto& one : kWireFields) {
            all.push_back(adjustable(Subject::Wire, id.text, wire.reference, *one.spec));
        }
    }
    for (const auto& [id, hose] : circuit.hoses) {
        for (const auto& one : kHoseFields) {
            all.push_back(adjustable(Subject::Hose, id.text, hose.reference, *one.spec));
        }
    }
    return all;
}

Result<Adjustable> findAdjustable(const Circuit& circuit, std::string_view name) {
    const std::vector<Adjustable> all = adjustables(circuit);
    for (const Adjustable& one : all) {
        if (one.name == name) {
            return one;
        }
    }
    return tl::unexpected(Error{ErrorCode::DanglingReference,
                                fmt::format("No value is called \"{}\". {}", name, namesLike(all, name)),
                                {}});
}

double valueOf(const Circuit& circuit, const Adjustable& what) {
    switch (what.subject) {
    case Subject::Wire:
        return circuit.wires.at(WireId{what.id}).*memberOf(kWireFields, what.spec);
    case Subject::Hose:
        return circuit.hoses.at(HoseId{what.id}).*memberOf(kHoseFields, what.spec);
    case Subject::Part:
    case Subject::Terminal:
    case Subject::Port:
        break;
    }
    const Part& part = circuit.parts.at(PartId{what.id});
    return kindOf(part).value(part, what.spec->key);
}

Change settingOf(const Circuit& circuit, const Adjustable& what, double value) {
    switch (what.subject) {
    case Subject::Wire: {
        Wire wire = circuit.wires.at(WireId{what.id});
        wire.*memberOf(kWireFields, what.spec) = value;
        return putWire(WireId{what.id}, std::move(wire));
    }
    case Subject::Hose: {
        Hose hose = circuit.hoses.at(HoseId{what.id});
        hose.*memberOf(kHoseFields, what.spec) = value;
        return putHose(HoseId{what.id}, std::move(hose));
    }
    case Subject::Part:
    case Subject::Terminal:
    case Subject::Port:
        break;
    }
    Part part = circuit.parts.at(PartId{what.id});
    part.values[std::string(what.spec->key)] = value;
    return putPart(PartId{what.id}, std::move(part));
}

void setValue(Circuit& circuit, const Adjustable& what, double value) {
    applyEdit(circuit, {"", {settingOf(circuit, what, value)}});
}

Result<double> valueInRange(const Adjustable& what, double value) {
    if (value >= what.spec->low && value <= what.spec->high) {
        return value;
    }
    return tl::unexpected(Error{ErrorCode::OutOfRange,
                                fmt::format("{} cannot be {}. Allowed is {} to {}.", what.label,
                                            formatQuantity(value, what.spec->kind),
                                            formatQuantity(what.spec->low, what.spec->kind),
                                            formatQuantity(what.spec->high, what.spec->kind)),
                                {}});
}

} // namespace pumpwright
