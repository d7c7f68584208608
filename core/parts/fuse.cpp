#include "core/parts/contact.h"
#include "core/parts/fuse_band.h"
#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"
#include "core/units/text.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace pumpwright {
namespace {

constexpr std::array kParameters{
    ParameterSpec{"rating_A", words("Rating"), QuantityKind::Current, 15, 0.5, 500},
    ParameterSpec{"breaking_A", words("Breaking capacity"), QuantityKind::Current, 1000, 10, 1e5},
    ParameterSpec{"voltage_V", words("Rated voltage"), QuantityKind::Voltage, 32, 6, 1000},
};

const std::array kChoices{
    ChoiceSpec{"type",
               words("Type (ISO 8820-3)"),
               {{"C", words("C, medium")}, {"F", words("F, small")}, {"E", words("E, high current")}}},
    ChoiceSpec{"band",
               words("Opens at"),
               {{"middle", words("middle of the published band")},
                {"fast", words("fast edge")},
                {"slow", words("slow edge")}}},
};

/// [V] that the gap of an open fuse stands: no less than the Paschen minimum in air.
constexpr double kOpenGap_V = 330;

/// Cold resistance that opens when the sum of dt/t_open(I) reaches 1: the cumulative rule, an approximation
/// of common practice. Memory: is it open.
class FuseLaw final : public Law {
public:
    FuseLaw(FuseType type, FuseEdge edge, double rating_A, LawContext& context)
        : m_type(type), m_edge(edge), m_resistance_ohm(fuseResistance_ohm(type, rating_A)),
          m_holds_A(rating_A * fuseAmbientShare(context.surroundings().ambientTemperature_K())),
          m_from(context.node("1")), m_to(context.node("2")),
          m_link(m_from, m_to, m_resistance_ohm, kOpenGap_V),
          m_openShare(context.addUnknown({"share of the way to opening", 0, 1e-4})) {}

    void addEquations(const Point& at, Equations& equations) const override {
        m_link.addEquations(at, !open(at), equations);
        if (open(at)) {
            return;
        }
        const double current_A = m_link.current_A(at, true);
        const SmoothValue rate = openingRate(m_type, std::abs(current_A) / m_holds_A, m_edge);
        const double slope = std::copysign(rate.slope, current_A) / m_holds_A / m_resistance_ohm;
        equations.add(m_openShare, rate.value);
        equations.addSlope(m_openShare, m_from, slope);
        equations.addSlope(m_openShare, m_to, -slope);
    }

    void addMasses(MassMatrix& masses) const override {
        m_link.addMasses(masses);
        masses.add(m_openShare, m_openShare, 1);
    }
    void addAccount(const Point& at, Account& account) const override {
        m_link.addAccount(at, !open(at), account);
    }

    std::vector<double> memoryAtStart() const override { return {0}; }
    std::size_t eventCount() const override { return 1; }
    double eventValue(std::size_t, const Point& at) const override {
        return open(at) ? -1 : at[m_openShare] - 1;
    }
    std::string happen(std::size_t, const Point&, std::span<double> memory) const override {
        memory[0] = 1;
        return words("fuse opens");
    }

    std::vector<Probe> probes() const override {
        return {{probe::kCurrent, words("current"), QuantityKind::Current, false, 1e-3},
                {probe::kOpenShare, words("way to opening"), QuantityKind::Share, false, 1e-3}};
    }
    void probeValues(const Point& at, std::span<double> values) const override {
        values[0] = m_link.current_A(at, !open(at));
        values[1] = open(at) ? 1.0 : std::clamp(at[m_openShare], 0.0, 1.0);
    }

private:
    static bool open(const Point& at) { return at.memory[0] > 0; }

    FuseType m_type;
    FuseEdge m_edge;
    double m_resistance_ohm;
    double m_holds_A;
    Unknown m_from;
    Unknown m_to;
    ContactElement m_link;
    Unknown m_openShare;
};

class FuseKind final : public PartKind {
public:
    std::string_view id() const override { return "fuse"; }
    std::string_view title() const override { return words("Fuse"); }
    DrawerGroup group() const override { return DrawerGroup::Protection; }
    std::string_view letter() const override { return "F"; }

    std::vector<TerminalSpec> terminals(const Part&) const override {
        return {{"1", {-2, 0}, words("towards the supply")}, {"2", {2, 0}, words("towards the load")}};
    }
    std::span<const ParameterSpec> parameters() const override { return kParameters; }
    std::span<const ChoiceSpec> choices() const override { return kChoices; }

    Features features(const Part& part) const override {
        Features features;
        features.paths = {{"1", "2", false, true}};
        features.fuse = FuseRating{"1",
                                   "2",
                                   value(part, "rating_A"),
                                   value(part, "breaking_A"),
                                   value(part, "voltage_V"),
                                   fuseType(choice(part, "type"))};
        return features;
    }
    std::unique_ptr<Law> law(const Part& part, LawContext& context) const override {
        return std::make_unique<FuseLaw>(fuseType(choice(part, "type")), fuseEdge(choice(part, "band")),
                                         value(part, "rating_A"), context);
    }
};

} // namespace

const PartKind& fuseKind() {
    static const FuseKind kind;
    return kind;
}

} // namespace pumpwright
