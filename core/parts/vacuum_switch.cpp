#include "core/parts/contact.h"
#include "core/parts/gas.h"
#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"
#include "core/units/text.h"

#include <array>

namespace pumpwright {
namespace {

constexpr ContactStandard kStandardContact{0.01, {5, 10, 5, 3, 0.001, 1e5}};

constexpr std::array kOwnParameters{
    ParameterSpec{"setPoint_Pa", words("Closes when vacuum falls to"), QuantityKind::GaugeVacuum, 50000, 500,
                  1e5, 0.08},
    ParameterSpec{"differential_Pa", words("Opens this much above"), QuantityKind::PressureDifference, 5000,
                  10, 9e4, 0.3},
    ParameterSpec{"deadVolume_m3", words("Volume inside"), QuantityKind::Volume, 2e-6, 1e-7, 1e-3},
};
constexpr auto kParameters = joined(kOwnParameters, contactParameters(kStandardContact));

/// A diaphragm that snaps a contact over: closed while vacuum is short.
class VacuumSwitchLaw final : public Law {
public:
    VacuumSwitchLaw(ContactElement contact, GasVolume inside, double closesAt_Pa, double opensAt_Pa)
        : m_contact(contact), m_inside(inside), m_closesAt_Pa(closesAt_Pa), m_opensAt_Pa(opensAt_Pa) {}

    void addEquations(const Point& at, Equations& equations) const override {
        m_inside.addEquations(at, equations);
        m_contact.addEquations(at, closed(at), equations);
    }
    void addMasses(MassMatrix& masses) const override {
        m_inside.addMasses(masses);
        m_contact.addMasses(masses);
    }
    void addAccount(const Point& at, Account& account) const override {
        m_inside.addAccount(at, account);
        m_contact.addAccount(at, closed(at), account);
    }

    /// Open; a start with too little vacuum closes it as the first event.
    std::vector<double> memoryAtStart() const override { return {0}; }
    std::size_t eventCount() const override { return 1; }
    double eventValue(std::size_t, const Point& at) const override {
        return closed(at) ? vacuum_Pa(at) - m_opensAt_Pa : m_closesAt_Pa - vacuum_Pa(at);
    }
    std::string happen(std::size_t, const Point& at, std::span<double> memory) const override {
        const bool nowClosed = !closed(at);
        memory[0] = nowClosed ? 1 : 0;
        return nowClosed ? words("vacuum switch closes") : words("vacuum switch opens");
    }

    std::vector<Probe> probes() const override { return contactProbes(); }
    void probeValues(const Point& at, std::span<double> values) const override {
        values[0] = closed(at) ? 1 : 0;
        values[1] = m_contact.current_A(at, closed(at));
    }

private:
    static bool closed(const Point& at) { return at.memory[0] > 0.5; }
    double vacuum_Pa(const Point& at) const {
        return at.surroundings.ambientPressure_Pa(at.time_s) - at[m_inside.node.pressure];
    }

    ContactElement m_contact;
    GasVolume m_inside;
    double m_closesAt_Pa;
    double m_opensAt_Pa;
};

class VacuumSwitchKind final : public PartKind {
public:
    std::string_view id() const override { return "vacuum-switch"; }
    std::string_view title() const override { return words("Vacuum switch"); }
    DrawerGroup group() const override { return DrawerGroup::Sensing; }
    std::string_view letter() const override { return "B"; }

    std::vector<TerminalSpec> terminals(const Part&) const override {
        return {{"1", {-2, 0}, words("contact")}, {"2", {2, 0}, words("contact")}};
    }
    std::vector<PortSpec> ports(const Part&) const override { return {{"vacuum", {0, 2}, words("vacuum")}}; }
    std::span<const ParameterSpec> parameters() const override { return kParameters; }

    Features features(const Part& part) const override {
        Features features;
        features.paths = {{"1", "2", false, true}};
        features.contacts = {contactFeature(*this, part, "1", "2", Operator::Vacuum)};
        features.contacts.front().closedAtRest = true;
        features.sensingPort = "vacuum";
        features.setPoints = {"setPoint_Pa", "differential_Pa"};
        return features;
    }

    std::vector<Failure> failures(const Part& part) const override {
        std::vector<Failure> all = PartKind::failures(part);
        all.push_back({"set-point-low", "set point has drifted to half", {scaled(part, "setPoint_Pa", 0.5)}});
        all.push_back({"set-point-high",
                       "set point has drifted up by a third",
                       {scaled(part, "setPoint_Pa", 4.0 / 3)}});
        return all;
    }

    std::unique_ptr<Law> law(const Part& part, LawContext& context) const override {
        const double deadVolume_m3 = value(part, "deadVolume_m3");
        context.setPortVolume("vacuum", deadVolume_m3, true);
        const double setPoint_Pa = value(part, "setPoint_Pa");
        return std::make_unique<VacuumSwitchLaw>(
            contactElement(*this, part, context.node("1"), context.node("2")),
            GasVolume::withWall(context.gas("vacuum"), deadVolume_m3, kFittingWallTime_s,
                                context.surroundings()),
            setPoint_Pa, setPoint_Pa + value(part, "differential_Pa"));
    }
};

} // namespace

const PartKind& vacuumSwitchKind() {
    static const VacuumSwitchKind kind;
    return kind;
}

} // namespace pumpwright
