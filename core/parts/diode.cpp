#include "core/parts/junction_law.h"
#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"
#include "core/units/text.h"

#include <array>

namespace pumpwright {
namespace {

constexpr std::array kParameters{
    ParameterSpec{"forwardVoltage_V", words("Forward voltage at rated current"), QuantityKind::Voltage, 0.9,
                  0.1, 3},
    ParameterSpec{"ratedCurrent_A", words("Rated current"), QuantityKind::Current, 3, 0.01, 1000},
    ParameterSpec{"seriesResistance_ohm", words("Series resistance"), QuantityKind::Resistance, 0.02, 1e-5,
                  10},
    ParameterSpec{"surgeCurrent_A", words("Surge current, 8 ms"), QuantityKind::Current, 60, 0.01, 10000},
    ParameterSpec{"reverseVoltage_V", words("Blocks up to"), QuantityKind::Voltage, 400, 5, 5000},
};

class DiodeKind final : public PartKind {
public:
    std::string_view id() const override { return "diode"; }
    std::string_view title() const override { return words("Diode"); }
    DrawerGroup group() const override { return DrawerGroup::Suppression; }
    std::string_view letter() const override { return "R"; }

    std::vector<TerminalSpec> terminals(const Part&) const override {
        return {{"A", {-2, 0}, words("anode")}, {"K", {2, 0}, words("cathode")}};
    }
    std::span<const ParameterSpec> parameters() const override { return kParameters; }

    Features features(const Part& part) const override {
        Features features;
        features.fitting = Fitting::Splice;
        features.paths = {{"A", "K", true}};
        features.rectifier = Rectifier{"A",
                                       "K",
                                       value(part, "ratedCurrent_A"),
                                       value(part, "reverseVoltage_V"),
                                       false,
                                       value(part, "surgeCurrent_A")};
        return features;
    }
    std::unique_ptr<Law> law(const Part& part, LawContext& context) const override {
        return junctionLaw(context.node("A"), context.node("K"),
                           rectifierValues(value(part, "forwardVoltage_V"), value(part, "ratedCurrent_A"),
                                           value(part, "seriesResistance_ohm"),
                                           value(part, "reverseVoltage_V")));
    }
};

} // namespace

const PartKind& diodeKind() {
    static const DiodeKind kind;
    return kind;
}

} // namespace pumpwright
