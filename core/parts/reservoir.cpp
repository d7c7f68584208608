#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"
#include "core/parts/vessel.h"
#include "core/units/text.h"

#include <array>

namespace pumpwright {
namespace {

constexpr std::array kParameters{
    ParameterSpec{"volume_m3", words("Volume"), QuantityKind::Volume, 2e-3, 5e-5, 0.1},
    ParameterSpec{"wallTimeConstant_s", words("Wall brings gas back to ambient temperature in"),
                  QuantityKind::Time, 3, 0.05, 600},
};

class ReservoirKind final : public PartKind {
public:
    std::string_view id() const override { return "reservoir"; }
    std::string_view title() const override { return words("Vacuum reservoir"); }
    DrawerGroup group() const override { return DrawerGroup::Vacuum; }
    std::string_view letter() const override { return "C"; }

    std::vector<TerminalSpec> terminals(const Part&) const override { return {}; }
    std::vector<PortSpec> ports(const Part&) const override {
        return {{"a", {-3, 0}, words("one port")}, {"b", {3, 0}, words("other port, may stay closed")}};
    }
    std::span<const ParameterSpec> parameters() const override { return kParameters; }
    Features features(const Part&) const override {
        Features features;
        features.airWays = {{"a", "b"}};
        return features;
    }

    std::unique_ptr<Law> law(const Part& part, LawContext& context) const override {
        const double volume_m3 = value(part, "volume_m3");
        context.setPortVolume("a", volume_m3, true);
        context.joinPorts("a", "b");
        return std::make_unique<VesselLaw>(GasVolume::withWall(
            context.gas("a"), volume_m3, value(part, "wallTimeConstant_s"), context.surroundings()));
    }
};

} // namespace

const PartKind& reservoirKind() {
    static const ReservoirKind kind;
    return kind;
}

} // namespace pumpwright
