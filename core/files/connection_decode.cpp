#include "core/files/circuit_decode.h"
#include "core/files/nearest_word.h"
#include "core/parts/conductor.h"
#include "core/parts/document_fields.h"
#include "core/parts/place.h"
#include "core/units/quoted_text.h"

#include <fmt/core.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>

namespace pumpwright {
namespace {

// IEC 60757, letter codes of colours.
constexpr std::array<std::string_view, 15> kColours{"BK", "BN", "RD", "OG", "YE", "GN", "BU",  "VT",
                                                    "GY", "WH", "PK", "GD", "TQ", "SR", "GNYE"};

bool isColour(std::string_view code) {
    if (code.empty() || code.size() % 2 != 0 || code.size() > 8) {
        return false;
    }
    for (; !code.empty(); code.remove_prefix(2)) {
        if (std::find(kColours.begin(), kColours.end(), code.substr(0, 2)) == kColours.end()) {
            return false;
        }
    }
    return true;
}

/// Whether it is a list of two whole numbers, none of them beyond `farthest` to either side.
bool isPair(const OrderedJson& value, int farthest) {
    const auto isNear = [farthest](const OrderedJson& one) {
        return one.is_number_integer() && one >= -farthest && one <= farthest;
    };
    return value.is_array() && value.size() == 2 && isNear(value[0]) && isNear(value[1]);
}

GridPoint decodedPoint(const OrderedJson& value, const std::string& pointer, ReadFault& fault) {
    if (!isPair(value, field::kFarthestPlace)) {
        fault.refuse(
            ErrorCode::WrongType, pointer,
            fmt::format("A place on the sheet is a list of two whole numbers, right and down, as in [4, 6], "
                        "each from {} to {}.",
                        -field::kFarthestPlace, field::kFarthestPlace));
        return {};
    }
    return {value[0].get<int>(), value[1].get<int>()};
}

std::optional<LabelOffset> decodedLabel(ObjectReader& object) {
    constexpr std::string_view kKey = "labelFrom_mm";
    const OrderedJson* value = object.member(kKey);
    if (!value) {
        return std::nullopt;
    }
    if (!isPair(*value, field::kFarthestLabel_mm)) {
        object.refuse(
            ErrorCode::WrongType, kKey,
            fmt::format("Where a label stands is a list of two whole numbers in mm, right and down, "
                        "as in [12, -8], each from {} to {}.",
                        -field::kFarthestLabel_mm, field::kFarthestLabel_mm));
        return std::nullopt;
    }
    return LabelOffset{(*value)[0].get<int>(), (*value)[1].get<int>()};
}

std::string decodedInsulation(ObjectReader& wire, const std::string& fallback) {
    std::string insulation = wire.text("insulation", fallback);
    if (!findInsulation(insulation)) {
        std::vector<std::string_view> known;
        for (const InsulationClass& one : insulationClasses()) {
            known.push_back(one.id);
        }
        wire.refuse(ErrorCode::UnknownChoice, "insulation",
                    fmt::format("There is no insulation class {}. Known are: {}.", quotedText(insulation),
                                fmt::join(known, ", ")));
    }
    return insulation;
}

/// One of a list of codes, or nothing.
std::string decodedCode(ObjectReader& object, std::string_view key, std::span<const std::string_view> known) {
    std::string code = object.text(key);
    if (!code.empty() && std::find(known.begin(), known.end(), code) == known.end()) {
        object.refuse(
            ErrorCode::UnknownChoice, std::string(key),
            fmt::format("There is no {} {}. Known are: {}.", key, quotedText(code), fmt::join(known, ", ")));
    }
    return code;
}

End decodedEnd(ObjectReader& connection, std::string_view key) {
    connection.require(key);
    ObjectReader end = connection.object(key);
    End decoded{{end.id("part")}, end.textOf("terminal")};
    for (const auto& [unknown, text] : end.unknownKeys()) {
        end.refuse(ErrorCode::WrongType, unknown,
                   "An end has the keys \"part\" and \"terminal\" and no others.");
    }
    return decoded;
}

std::vector<GridPoint> decodedBends(ObjectReader& connection) {
    std::vector<GridPoint> bends;
    connection.forEach("bends", [&](const OrderedJson& value, const std::string& pointer) {
        bends.push_back(decodedPoint(value, pointer, connection.fault()));
    });
    return bends;
}

void readValue(const OrderedJson& value, std::string_view key, const ObjectReader& values,
               const PartKind& kind, std::map<std::string, double>& into) {
    if (!value.is_number()) {
        values.refuseType(value, key, "a number");
        return;
    }
    const auto specs = kind.parameters();
    const auto spec =
        std::find_if(specs.begin(), specs.end(), [&](const ParameterSpec& one) { return one.key == key; });
    if (spec != specs.end()) {
        checkRange(value.get<double>(), *spec, values.pointerTo(key), values.fault());
    }
    into.emplace(key, value.get<double>());
}

void readChoice(const OrderedJson& value, std::string_view key, const ObjectReader& choices,
                const PartKind& kind, std::map<std::string, std::string>& into) {
    if (!value.is_string()) {
        choices.refuseType(value, key, "a text");
        return;
    }
    const auto text = value.get<std::string>();
    const auto specs = kind.choices();
    const auto spec =
        std::find_if(specs.begin(), specs.end(), [&](const ChoiceSpec& one) { return one.key == key; });
    if (spec != specs.end()) {
        std::vector<std::string_view> ids;
        for (const ChoiceSpec::Option& option : spec->options) {
            ids.push_back(option.id);
        }
        if (std::find(ids.begin(), ids.end(), text) == ids.end()) {
            choices.refuse(ErrorCode::UnknownChoice, key,
                           fmt::format("{} of a {} cannot be {}. Allowed is one of: {}.", quotedText(key),
                                       kind.id(), quotedText(text), fmt::join(ids, ", ")));
        }
    }
    into.emplace(key, text);
}

constexpr std::array<std::string_view, 3> kToleranceSorts{"uniform", "normal", "limits"}; // as in the enum

Tolerance decodedTolerance(const OrderedJson& value, const std::string& pointer, ReadFault& fault) {
    ObjectReader object(value, pointer, fault);
    const std::string sort = object.text("sort", std::string(kToleranceSorts.front()));
    const auto found = std::ranges::find(kToleranceSorts, sort);
    if (found == kToleranceSorts.end()) {
        object.refuse(ErrorCode::UnknownChoice, "sort",
                      fmt::format("A tolerance cannot be {}. Allowed is one of: {}.", quotedText(sort),
                                  fmt::join(kToleranceSorts, ", ")));
        return {};
    }
    object.require(field::kToleranceShare.key);
    const double share = object.number(field::kToleranceShare);
    for (const auto& [unknown, text] : object.unknownKeys()) {
        object.refuse(ErrorCode::WrongType, unknown,
                      "A tolerance has the keys \"sort\" and \"share\" and no others.");
    }
    return {static_cast<ToleranceSort>(found - kToleranceSorts.begin()), share};
}

/// Tolerances by parameter key; a key that the kind does not have is a fault, it would do nothing.
std::map<std::string, Tolerance> decodedTolerances(ObjectReader& part, const PartKind& kind) {
    std::map<std::string, Tolerance> tolerances;
    ObjectReader object = part.object("tolerances");
    object.forEachMember([&](const std::string& key, const OrderedJson& value) {
        const auto specs = kind.parameters();
        if (std::ranges::find(specs, key, &ParameterSpec::key) == specs.end()) {
            object.refuse(
                ErrorCode::UnknownChoice, key,
                fmt::format("A {} has no value {} that could have a tolerance.", kind.id(), quotedText(key)));
            return;
        }
        tolerances.emplace(key, decodedTolerance(value, object.pointerTo(key), object.fault()));
    });
    return tolerances;
}

} // namespace

void readRatings(ObjectReader& object, const PartKind& kind, std::map<std::string, double>& values,
                 std::map<std::string, std::string>& choices) {
    ObjectReader valueObject = object.object("values");
    valueObject.forEachMember([&](const std::string& key, const OrderedJson& value) {
        readValue(value, key, valueObject, kind, values);
    });
    ObjectReader choiceObject = object.object("choices");
    choiceObject.forEachMember([&](const std::string& key, const OrderedJson& value) {
        readChoice(value, key, choiceObject, kind, choices);
    });
}

const PartKind* readKind(ObjectReader& object) {
    const std::string id = object.textOf("kind");
    const PartKind* kind = findPartKind(id);
    if (!kind) {
        std::vector<std::string_view> known;
        for (const PartKind* one : partKinds()) {
            known.push_back(one->id());
        }
        const std::string_view nearest = nearestWord(id, known);
        object.refuse(ErrorCode::UnknownKind, "kind",
                      nearest.empty() ? fmt::format("There is no part kind {}. Known are: {}.",
                                                    quotedText(id), fmt::join(known, ", "))
                                      : fmt::format("There is no part kind {}. Is {} meant?", quotedText(id),
                                                    quotedText(nearest)));
    }
    return kind;
}

std::pair<PartId, Part> decodedPart(const OrderedJson& value, const std::string& pointer, ReadFault& fault) {
    ObjectReader object(value, pointer, fault);
    PartId id{object.id("id")};
    Part part;
    if (const PartKind* kind = readKind(object)) {
        part.kind = std::string(kind->id());
        readRatings(object, *kind, part.values, part.choices);
        part.tolerances = decodedTolerances(object, *kind);
    }
    part.reference = object.text("reference");
    part.label = object.text("label");
    part.catalogue = object.text("catalogue");
    part.note = object.text("note");
    part.price = object.number(field::kPrice);
    part.place = decodedCode(object, "place", placeIds());
    part.ingress = decodedCode(object, "ingress", ingressCodes());
    part.ratedTemperature_K = object.number(field::kRatedTemperature);
    if (object.require("at")) {
        part.at = decodedPoint(*object.member("at"), object.pointerTo("at"), fault);
    }
    part.quarterTurns = object.integer("quarterTurns", 0, 0, 3);
    part.mirrored = object.flag("mirrored", false);
    part.labelFrom = decodedLabel(object);
    part.unknown = object.unknownKeys();
    return {std::move(id), std::move(part)};
}

std::pair<WireId, Wire> decodedWire(const OrderedJson& value, const std::string& pointer, ReadFault& fault) {
    ObjectReader object(value, pointer, fault);
    WireId id{object.id("id")};
    Wire wire;
    wire.reference = object.text("reference");
    wire.from = decodedEnd(object, "from");
    wire.to = decodedEnd(object, "to");
    wire.colour = object.text("colour", wire.colour);
    if (!isColour(wire.colour)) {
        object.refuse(
            ErrorCode::UnknownChoice, "colour",
            fmt::format("{} is no wire colour. Allowed are the letters {}, up to four together, as in "
                        "\"RDBU\".",
                        quotedText(wire.colour), fmt::join(kColours, " ")));
    }
    wire.area_m2 = object.number(field::kWireArea);
    wire.length_m = object.number(field::kWireLength);
    wire.insulation = decodedInsulation(object, wire.insulation);
    wire.bundled = object.integer("bundled", wire.bundled, 1, field::kMostBundled);
    wire.sheathed = object.flag("sheathed", wire.sheathed);
    wire.price_perMetre = object.number(field::kPricePerMetre);
    wire.bends = decodedBends(object);
    wire.labelFrom = decodedLabel(object);
    wire.unknown = object.unknownKeys();
    return {std::move(id), std::move(wire)};
}

std::pair<HoseId, Hose> decodedHose(const OrderedJson& value, const std::string& pointer, ReadFault& fault) {
    ObjectReader object(value, pointer, fault);
    HoseId id{object.id("id")};
    Hose hose;
    hose.reference = object.text("reference");
    hose.from = decodedEnd(object, "from");
    hose.to = decodedEnd(object, "to");
    hose.innerDiameter_m = object.number(field::kHoseDiameter);
    hose.length_m = object.number(field::kHoseLength);
    hose.leakHole_m = object.number(field::kHoseLeak);
    hose.price_perMetre = object.number(field::kPricePerMetre);
    hose.bends = decodedBends(object);
    hose.labelFrom = decodedLabel(object);
    hose.unknown = object.unknownKeys();
    return {std::move(id), std::move(hose)};
}

} // namespace pumpwright
