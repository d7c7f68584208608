#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"
#include "core/parts/vessel.h"
#include "core/units/text.h"

#include <array>

namespace pumpwright {
namespace {

constexpr std::array kParameters{
    ParameterSpec{"volume_m3", words("Volume inside"), QuantityKind::Volume, 5e-6, 1e-6, 1e-3},
};

class TeeKind final : public PartKind {
public:
    std::string_view id() const override { return "tee"; }
    std::string_view title() const override { return words("Hose tee"); }
    DrawerGroup group() const override { return DrawerGroup::Vacuum; }
    std::string_view letter() const override { return "X"; }

    std::vector<TerminalSpec> terminals(const Part&) const override { return {}; }
    std::vector<PortSpec> ports(const Part&) const override {
        return {{"a", {-1, 0}, words("run")}, {"b", {1, 0}, words("run")}, {"c", {0, 1}, words("branch")}};
    }
    std::span<const ParameterSpec> parameters() const override { return kParameters; }
    Features features(const Part&) const override {
        Features features;
        features.airWays = {{"a", "b"}, {"a", "c"}};
        return features;
    }

    std::unique_ptr<Law> law(const Part& part, LawContext& context) const override {
        const double volume_m3 = value(part, "volume_m3");
        context.setPortVolume("a", volume_m3, true);
        context.joinPorts("a", "b");
        context.joinPorts("a", "c");
        return std::make_unique<VesselLaw>(
            GasVolume::withWall(context.gas("a"), volume_m3, kFittingWallTime_s, context.surroundings()));
    }
};

} // namespace

const PartKind& teeKind() {
    static const TeeKind kind;
    return kind;
}

} // namespace pumpwright
