#include "app/desktop/panels/nameplate_fields.h"
#include "core/parts/document_fields.h"

#include <QCoreApplication>

#include <cmath>

namespace pumpwright {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("pumpwright", text);
}

using Read = std::function<double(const ProjectLimits&)>;
using Write = std::function<void(ProjectLimits&, double)>;

NameplateField limitField(const Circuit& circuit, const char* key, const QString& label,
                          const QuantityRange& range, const Read& read, const Write& write) {
    NameplateField field;
    field.key = QString::fromLatin1(key);
    field.label = label;
    field.sort = NameplateField::Sort::Quantity;
    field.range = range;
    field.value = FieldValue(read(circuit.limits));
    field.edit = [label, kind = range.kind, write](const Circuit& now, const FieldValue& value) {
        ProjectLimits limits = now.limits;
        write(limits, std::get<double>(value));
        const QString text = quantityText(std::get<double>(value), kind, {});
        return Edit{tr("Set the limit “%1” to %2").arg(label.toLower(), text).toStdString(),
                    {replaceLimits(std::move(limits))}};
    };
    return field;
}

NameplateField limitField(const Circuit& circuit, const ParameterSpec& spec, double ProjectLimits::*member) {
    return limitField(
        circuit, spec.key.data(), translatedWords(spec.label), {spec.kind, spec.low, spec.high},
        [member](const ProjectLimits& limits) { return limits.*member; },
        [member](ProjectLimits& limits, double value) { limits.*member = value; });
}

NameplateField limitField(const Circuit& circuit, const char* key, const QString& label, double low,
                          double high, int ProjectLimits::*member) {
    return limitField(
        circuit, key, label, {QuantityKind::Number, low, high},
        [member](const ProjectLimits& limits) { return static_cast<double>(limits.*member); },
        [member](ProjectLimits& limits, double value) {
            limits.*member = static_cast<int>(std::lround(value));
        });
}

} // namespace

std::vector<NameplateField> limitFields(const Circuit& circuit) {
    return {limitField(circuit, field::kVoltageDropShare, &ProjectLimits::voltageDropShare),
            limitField(circuit, field::kLimitAmbient, &ProjectLimits::ambient_K),
            limitField(circuit, "leastBundled", tr("Loaded wires in a bundle, at least"), 1,
                       field::kMostBundled, &ProjectLimits::leastBundled),
            limitField(circuit, field::kContinuousFuseShare, &ProjectLimits::continuousFuseShare),
            limitField(circuit, field::kLowestSupply, &ProjectLimits::lowestSupply_V),
            limitField(circuit, field::kParked, &ProjectLimits::parked_s),
            limitField(circuit, field::kDrivenPerYear, &ProjectLimits::drivenPerYear_s),
            limitField(circuit, "reservePresses", tr("Presses with assist after the pump has died"), 0,
                       field::kMostReserve, &ProjectLimits::reservePresses)};
}

} // namespace pumpwright
