#include "core/parts/kinds.h"
#include "core/parts/open_circuit_voltage.h"
#include "core/parts/part_kind.h"
#include "core/parts/saturation.h"

#include <array>

namespace pumpwright {
namespace {

constexpr std::array kParameters{
    ParameterSpec{"stateOfCharge_share", "State of charge at the start", QuantityKind::Share, 1, 0, 1},
    ParameterSpec{"capacity_C", "Capacity", QuantityKind::Charge, 216e3, 360, 3.6e6},
    ParameterSpec{"internalResistance_ohm", "Internal resistance", QuantityKind::Resistance, 0.008, 5e-4, 10,
                  0.2},
    ParameterSpec{"chargeVoltage_V", "Charging voltage", QuantityKind::Voltage, 14.0, 10, 20},
    ParameterSpec{"chargeLimit_A", "Charging current limit", QuantityKind::Current, 40, 0.1, 500},
    ParameterSpec{"chargeResistance_ohm", "Charging lead resistance", QuantityKind::Resistance, 0.01, 1e-3,
                  10},
    ParameterSpec{"vehicleLoad_A", "The vehicle's other consumption", QuantityKind::Current, 0, 0, 500},
};

const std::array kChoices{
    ChoiceSpec{"charging",
               "Charged by",
               {{"none", "nothing"}, {"alternator", "alternator"}, {"converter", "traction converter"}}},
};

/// [A] over which the charging source begins to regulate and to limit.
constexpr double kChargeCorner_A = 0.25;
/// [s] in which its current follows what the regulator asks. Common practice, no published source: a
/// converter takes a few milliseconds, an alternator's field longer.
constexpr double kRegulatorTime_s = 0.005;

/// Battery, and beside it a charging source while the drive plan says so. Memory: is the source at work.
class SupplyLaw final : public Law {
public:
    struct Values {
        double stateOfCharge_share;
        double capacity_C;
        double resistance_ohm;
        bool mayCharge;
        double chargeVoltage_V;
        double chargeLimit_A;
        double chargeResistance_ohm;
    };

    SupplyLaw(const Values& values, LawContext& context)
        : m_values(values), m_plus(context.node("30")), m_minus(context.node("31")),
          m_charge(context.addUnknown({"state of charge", values.stateOfCharge_share, 1e-6})) {
        if (values.mayCharge) {
            m_chargingCurrent = context.addUnknown({"charging current", 0, 1e-3});
        }
    }

    void addEquations(const Point& at, Equations& equations) const override {
        const double conductance_S = 1 / m_values.resistance_ohm;
        const SmoothValue emf = openCircuitVoltage_V(at[m_charge]);
        const double battery_A = conductance_S * (emf.value - at[m_plus] + at[m_minus]);
        equations.addCurrent(m_minus, m_plus, battery_A);
        addSlopes(equations, conductance_S);
        equations.addCurrentSlope(m_minus, m_plus, m_charge, conductance_S * emf.slope);

        equations.add(m_charge, -battery_A);
        equations.addSlope(m_charge, m_plus, conductance_S);
        equations.addSlope(m_charge, m_minus, -conductance_S);
        equations.addSlope(m_charge, m_charge, -conductance_S * emf.slope);

        if (m_values.mayCharge) {
            addCharging(at, equations);
        }
    }

    void addMasses(MassMatrix& masses) const override {
        masses.add(m_charge, m_charge, m_values.capacity_C);
        if (m_values.mayCharge) {
            masses.add(m_chargingCurrent, m_chargingCurrent, kRegulatorTime_s);
        }
    }

    std::vector<double> memoryAtStart() const override { return {0}; }
    std::size_t eventCount() const override { return 1; }
    double eventValue(std::size_t, const Point& at) const override {
        const bool wanted = m_values.mayCharge && at.surroundings.charging(at.time_s);
        return wanted == (at.memory[0] > 0) ? -1 : 1;
    }
    std::string happen(std::size_t, const Point&, std::span<double> memory) const override {
        memory[0] = 1 - memory[0];
        return memory[0] > 0 ? "charging begins" : "charging ends";
    }
    std::vector<Probe> probes() const override {
        return {{probe::kCurrent, "current delivered", QuantityKind::Current, false, 1e-3}};
    }
    void probeValues(const Point& at, std::span<double> values) const override {
        const double emf_V = openCircuitVoltage_V(at[m_charge]).value;
        values[0] = (emf_V - at[m_plus] + at[m_minus]) / m_values.resistance_ohm;
        values[0] += m_values.mayCharge ? at[m_chargingCurrent] : 0.0;
    }

private:
    /// A current from minus to plus that falls by `conductance_S` with the terminal voltage.
    void addSlopes(Equations& equations, double conductance_S) const {
        equations.addCurrentSlope(m_minus, m_plus, m_plus, -conductance_S);
        equations.addCurrentSlope(m_minus, m_plus, m_minus, conductance_S);
    }

    /// The source's current goes to what the regulator asks of it: regulated, limited, never backwards.
    void addCharging(const Point& at, Equations& equations) const {
        equations.addCurrent(m_minus, m_plus, at[m_chargingCurrent]);
        equations.addCurrentSlope(m_minus, m_plus, m_chargingCurrent, 1);
        equations.add(m_chargingCurrent, -at[m_chargingCurrent]);
        equations.addSlope(m_chargingCurrent, m_chargingCurrent, -1);
        if (at.memory[0] > 0) {
            const double conductance_S = 1 / m_values.chargeResistance_ohm;
            const double regulated_A = conductance_S * (m_values.chargeVoltage_V - at[m_plus] + at[m_minus]);
            const SmoothValue begins = smoothRamp(regulated_A, kChargeCorner_A);
            const SmoothValue limits = smoothRamp(regulated_A - m_values.chargeLimit_A, kChargeCorner_A);
            const double slope_S = conductance_S * (begins.slope - limits.slope);
            equations.add(m_chargingCurrent, begins.value - limits.value);
            equations.addSlope(m_chargingCurrent, m_plus, -slope_S);
            equations.addSlope(m_chargingCurrent, m_minus, slope_S);
        }
    }

    Values m_values;
    Unknown m_plus;
    Unknown m_minus;
    Unknown m_charge;
    Unknown m_chargingCurrent = kReference;
};

class SupplyKind final : public PartKind {
public:
    std::string_view id() const override { return "supply"; }
    std::string_view title() const override { return "Supply"; }
    DrawerGroup group() const override { return DrawerGroup::Supply; }
    std::string_view letter() const override { return "G"; }

    std::vector<TerminalSpec> terminals(const Part&) const override {
        return {{"30", {0, -2}, "positive pole", 4}, {"31", {0, 2}, "negative pole", 4}};
    }
    std::span<const ParameterSpec> parameters() const override { return kParameters; }
    std::span<const ChoiceSpec> choices() const override { return kChoices; }

    Features features(const Part& part) const override {
        Features features;
        features.fitting = Fitting::Stud;
        features.source = Source{"30",
                                 "31",
                                 openCircuitVoltage_V(value(part, "stateOfCharge_share")).value,
                                 value(part, "internalResistance_ohm"),
                                 value(part, "capacity_C"),
                                 choice(part, "charging") == "none" ? 0 : value(part, "chargeLimit_A"),
                                 value(part, "vehicleLoad_A")};
        return features;
    }

    std::vector<Failure> failures(const Part& part) const override {
        std::vector<Failure> all = PartKind::failures(part);
        all.push_back({"battery-flat", "nearly flat", {SetsValue{"stateOfCharge_share", 0.05}}});
        if (choice(part, "charging") != "none") {
            all.push_back({"charging-lost", "is not charged", {SetsChoice{"charging", "none"}}});
        }
        return all;
    }

    std::unique_ptr<Law> law(const Part& part, LawContext& context) const override {
        const SupplyLaw::Values values{
            value(part, "stateOfCharge_share"),    value(part, "capacity_C"),
            value(part, "internalResistance_ohm"), choice(part, "charging") != "none",
            value(part, "chargeVoltage_V"),        value(part, "chargeLimit_A"),
            value(part, "chargeResistance_ohm")};
        return std::make_unique<SupplyLaw>(values, context);
    }
};

} // namespace

const PartKind& supplyKind() {
    static const SupplyKind kind;
    return kind;
}

} // namespace pumpwright
