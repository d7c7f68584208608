#include "app/desktop/circuit/palette.h"
#include "app/desktop/panels/nameplate_field_builder.h"
#include "app/desktop/panels/wire_colours.h"
#include "core/parts/conductor.h"
#include "core/parts/document_fields.h"

namespace pumpwright {
namespace {

constexpr QuantityRange kBundled{QuantityKind::Number, 1, field::kMostBundled};

QString tr(const char* text) {
    return QCoreApplication::translate("pumpwright", text);
}

std::vector<NameplateField::Option> colourOptions() {
    std::vector<NameplateField::Option> options;
    for (const WireColourName& colour : wireColourNames()) {
        options.push_back({colour.letters, QStringLiteral("%1 %2").arg(colour.letters, colour.name),
                           insulationColours(colour.letters.toStdString())});
    }
    return options;
}

std::vector<NameplateField::Option> insulationOptions() {
    std::vector<NameplateField::Option> options;
    for (const InsulationClass& one : insulationClasses()) {
        options.push_back({shown(one.id), translatedWords(one.label)});
    }
    return options;
}

template <class Builder, class Object>
void addLength(Builder& builder, const ParameterSpec& spec) {
    builder.addQuantity(
        QStringLiteral("length_m"), QCoreApplication::translate("pumpwright", "Length"), rangeOf(spec),
        [](const Object& object) { return object.length_m; },
        [](Object& object, double value) { object.length_m = value; });
}

template <class Builder, class Object>
void addPrice(Builder& builder, const Circuit& circuit) {
    builder.addQuantity(
        QStringLiteral("price_perMetre"),
        QCoreApplication::translate("pumpwright", "Price per metre (%1)").arg(shown(circuit.currency)),
        rangeOf(field::kPricePerMetre), [](const Object& object) { return object.price_perMetre; },
        [](Object& object, double value) { object.price_perMetre = value; });
}

} // namespace

std::vector<NameplateField> wireFields(const Circuit& circuit, const std::vector<WireId>& wires) {
    using Builder = NameplateFieldBuilder<WireId, Wire>;
    Builder builder(circuit, wires);
    builder.addChoice(
        QStringLiteral("colour"), tr("Colour"), colourOptions(),
        [](const Wire& wire) { return editable(wire.colour); },
        [](Wire& wire, const QString& letters) { wire.colour = letters.toStdString(); });
    builder.last().open = true;
    builder.last().refusal = wireColourRefusal;
    builder.addQuantity(
        QStringLiteral("area_m2"), tr("Gauge"), rangeOf(field::kWireArea),
        [](const Wire& wire) { return wire.area_m2; },
        [](Wire& wire, double value) { wire.area_m2 = value; });
    addLength<Builder, Wire>(builder, field::kWireLength);
    builder.addChoice(
        QStringLiteral("insulation"), tr("Insulation"), insulationOptions(),
        [](const Wire& wire) { return editable(wire.insulation); },
        [](Wire& wire, const QString& id) { wire.insulation = id.toStdString(); });
    builder.addQuantity(
        QStringLiteral("bundled"), tr("Loaded wires in its bundle"), kBundled,
        [](const Wire& wire) { return static_cast<double>(wire.bundled); },
        [](Wire& wire, double value) { wire.bundled = static_cast<int>(value + 0.5); });
    builder.addChoice(
        QStringLiteral("sheathed"), tr("In a sheath all the way"),
        {{QStringLiteral("no"), tr("no")}, {QStringLiteral("yes"), tr("yes")}},
        [](const Wire& wire) { return wire.sheathed ? QStringLiteral("yes") : QStringLiteral("no"); },
        [](Wire& wire, const QString& id) { wire.sheathed = id == QLatin1String("yes"); });
    addPrice<Builder, Wire>(builder, circuit);
    return builder.take();
}

std::vector<NameplateField> hoseFields(const Circuit& circuit, const std::vector<HoseId>& hoses) {
    using Builder = NameplateFieldBuilder<HoseId, Hose>;
    Builder builder(circuit, hoses);
    builder.addQuantity(
        QStringLiteral("innerDiameter_m"), tr("Inner diameter"), rangeOf(field::kHoseDiameter),
        [](const Hose& hose) { return hose.innerDiameter_m; },
        [](Hose& hose, double value) { hose.innerDiameter_m = value; });
    addLength<Builder, Hose>(builder, field::kHoseLength);
    addPrice<Builder, Hose>(builder, circuit);
    return builder.take();
}

} // namespace pumpwright
