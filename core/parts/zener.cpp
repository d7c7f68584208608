#include "core/parts/junction_law.h"
#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"
#include "core/units/text.h"

#include <array>

namespace pumpwright {
namespace {

constexpr std::array kParameters{
    ParameterSpec{"zenerVoltage_V", words("Zener voltage"), QuantityKind::Voltage, 24, 2.4, 400, 0.05},
    ParameterSpec{"ratedPower_W", words("Rated power"), QuantityKind::Power, 5, 0.1, 5000},
    ParameterSpec{"zenerResistance_ohm", words("Resistance while it holds"), QuantityKind::Resistance, 2,
                  1e-3, 1000},
};

/// [V] highest supply voltage in service: ISO 16750-2, value from memory. Below it a Zener diode across the
/// supply conducts for ever.
constexpr double kHighestSupply_V = 16;

class ZenerKind final : public PartKind {
public:
    std::string_view id() const override { return "zener"; }
    std::string_view title() const override { return words("Zener diode"); }
    DrawerGroup group() const override { return DrawerGroup::Suppression; }
    std::string_view letter() const override { return "R"; }

    std::vector<TerminalSpec> terminals(const Part&) const override {
        return {{"A", {-2, 0}, words("anode")}, {"K", {2, 0}, words("cathode")}};
    }
    std::span<const ParameterSpec> parameters() const override { return kParameters; }

    Features features(const Part& part) const override {
        Features features;
        features.fitting = Fitting::Splice;
        const double zener_V = value(part, "zenerVoltage_V");
        features.paths = {{"A", "K", true}};
        if (zener_V < kHighestSupply_V) {
            features.paths.push_back({"K", "A", true});
        }
        features.rectifier = Rectifier{"A", "K", value(part, "ratedPower_W") / zener_V, zener_V, true, 0};
        return features;
    }
    std::unique_ptr<Law> law(const Part& part, LawContext& context) const override {
        const double zener_V = value(part, "zenerVoltage_V");
        // The voltage is stated at a quarter of the rated power, as data sheets do. Common practice.
        const double test_A = value(part, "ratedPower_W") / (4 * zener_V);
        return junctionLaw(context.node("A"), context.node("K"),
                           zenerValues(zener_V, test_A, value(part, "zenerResistance_ohm")));
    }
};

} // namespace

const PartKind& zenerKind() {
    static const ZenerKind kind;
    return kind;
}

} // namespace pumpwright
