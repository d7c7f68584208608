#include "app/desktop/panels/nameplate_field_builder.h"
#include "core/parts/document_fields.h"
#include "core/parts/part_kind.h"
#include "core/parts/place.h"

#include <algorithm>

namespace pumpwright {
namespace {

constexpr qsizetype kLongestText = 200;
constexpr qsizetype kLongestReference = 16;

using Builder = NameplateFieldBuilder<PartId, Part>;

QString tr(const char* text) {
    return QCoreApplication::translate("pumpwright", text);
}

std::string kept(const QString& text, qsizetype longest) {
    return text.trimmed().left(longest).toStdString();
}

/// A reference that two parts share leaves the wiring sheet unclear.
QString duplicateWarning(const Circuit& circuit, const PartId& id) {
    const std::string& reference = circuit.parts.at(id).reference;
    const bool shared = std::any_of(circuit.parts.begin(), circuit.parts.end(), [&](const auto& other) {
        return other.first != id && other.second.reference == reference;
    });
    return shared
               ? tr("Another part is also called %1. Give one of them another number.").arg(shown(reference))
               : QString();
}

void addReference(Builder& builder, const Circuit& circuit, const PartId& id) {
    builder.addText(
        QStringLiteral("reference"), tr("Reference"),
        [](const Part& part) { return editable(part.reference); },
        [](Part& part, const QString& text) {
            const std::string reference = kept(text, kLongestReference);
            // An empty reference would leave the part nameless on paper.
            part.reference = reference.empty() ? part.reference : reference;
        });
    builder.last().warning = duplicateWarning(circuit, id);
}

void addChoices(Builder& builder, const PartKind& kind) {
    for (const ChoiceSpec& spec : kind.choices()) {
        const std::string key(spec.key);
        std::vector<NameplateField::Option> options;
        for (const ChoiceSpec::Option& option : spec.options) {
            options.push_back({shown(option.id), translatedWords(option.label)});
        }
        builder.addChoice(
            shown(spec.key), translatedWords(spec.label), std::move(options),
            [&kind, key](const Part& part) { return editable(kind.choice(part, key)); },
            [key](Part& part, const QString& id) { part.choices[key] = id.toStdString(); });
    }
}

void addParameters(Builder& builder, const PartKind& kind) {
    for (const ParameterSpec& spec : kind.parameters()) {
        const std::string key(spec.key);
        builder.addQuantity(
            shown(spec.key), translatedWords(spec.label), rangeOf(spec),
            [&kind, key](const Part& part) { return kind.value(part, key); },
            [key](Part& part, double value) { part.values[key] = value; });
    }
}

/// Where the part is fitted, and what it stands there.
void addSurroundings(Builder& builder) {
    std::vector<NameplateField::Option> where{{QString(), tr("not stated")}};
    for (const VehiclePlace& place : places()) {
        where.push_back({shown(place.id), translatedWords(place.label)});
    }
    builder.addChoice(
        QStringLiteral("place"), tr("Place in the vehicle"), std::move(where),
        [](const Part& part) { return editable(part.place); },
        [](Part& part, const QString& id) { part.place = id.toStdString(); });
    std::vector<NameplateField::Option> codes{{QString(), tr("not stated")}};
    for (const std::string_view code : ingressCodes()) {
        codes.push_back({shown(code), shown(code)});
    }
    builder.addChoice(
        QStringLiteral("ingress"), tr("Protection (IEC 60529)"), std::move(codes),
        [](const Part& part) { return editable(part.ingress); },
        [](Part& part, const QString& id) { part.ingress = id.toStdString(); });
    builder.addQuantity(
        QStringLiteral("ratedTemperature_K"), tr("Stands surroundings up to"),
        rangeOf(field::kRatedTemperature), [](const Part& part) { return part.ratedTemperature_K; },
        [](Part& part, double value) { part.ratedTemperature_K = value; });
}

void addBookKeeping(Builder& builder, const Circuit& circuit) {
    builder.addQuantity(
        QStringLiteral("price"), tr("Price (%1)").arg(shown(circuit.currency)), rangeOf(field::kPrice),
        [](const Part& part) { return part.price; }, [](Part& part, double value) { part.price = value; });
    builder.addText(
        QStringLiteral("note"), tr("Where the values come from"),
        [](const Part& part) { return editable(part.note); },
        [](Part& part, const QString& text) { part.note = kept(text, kLongestText); });
}

} // namespace

std::vector<NameplateField> partFields(const Circuit& circuit, const std::vector<PartId>& parts) {
    Builder builder(circuit, parts);
    const PartKind& kind = kindOf(circuit.parts.at(parts.front()));
    if (parts.size() == 1) {
        addReference(builder, circuit, parts.front());
        builder.addText(
            QStringLiteral("label"), tr("Label"), [](const Part& part) { return editable(part.label); },
            [](Part& part, const QString& text) { part.label = kept(text, kLongestText); });
    }
    addChoices(builder, kind);
    addParameters(builder, kind);
    addSurroundings(builder);
    addBookKeeping(builder, circuit);
    return builder.take();
}

} // namespace pumpwright
