#include "core/parts/kinds.h"
#include "core/parts/open_circuit_voltage.h"
#include "core/parts/part_kind.h"
#include "core/parts/saturation.h"
#include "core/units/text.h"

#include <algorithm>
#include <array>

namespace pumpwright {
namespace {

constexpr std::array kParameters{
    ParameterSpec{"stateOfCharge_share", words("State of charge at the start"), QuantityKind::Share, 1, 0, 1},
    ParameterSpec{"capacity_C", words("Capacity"), QuantityKind::Charge, 216e3, 360, 3.6e6},
    ParameterSpec{"internalResistance_ohm", words("Internal resistance"), QuantityKind::Resistance, 0.008,
                  5e-4, 10, 0.2},
    ParameterSpec{"chargeVoltage_V", words("Charging voltage"), QuantityKind::Voltage, 14.0, 10, 20},
    ParameterSpec{"chargeLimit_A", words("Charging current limit"), QuantityKind::Current, 40, 0.1, 500},
    ParameterSpec{"chargeResistance_ohm", words("Charging lead resistance"), QuantityKind::Resistance, 0.01,
                  1e-3, 10},
    ParameterSpec{"crankingCurrent_A", words("Cranking current of the engine, at 10 V"),
                  QuantityKind::Current, 0, 0, 2000},
    ParameterSpec{"crankingTime_s", words("The engine is cranked for"), QuantityKind::Time, 1, 0.05, 30},
    ParameterSpec{"vehicleLoad_A", words("The vehicle's other consumption"), QuantityKind::Current, 0, 0,
                  500},
};

const std::array kChoices{
    ChoiceSpec{"charging",
               words("Charged by"),
               {{"none", words("nothing")},
                {"alternator", words("alternator")},
                {"converter", words("traction converter")}}},
};

/// [A] over which the charging source begins to regulate and to limit.
constexpr double kChargeCorner_A = 0.25;
/// [s] in which its current follows what the regulator asks. Common practice, no published source: a
/// converter takes a few milliseconds, an alternator's field longer.
constexpr double kRegulatorTime_s = 0.005;
/// [V] at which a cranking current is stated; the starter counts as a resistance. Common practice.
constexpr double kCranking_V = 10;

/// Battery, and beside it a charging source while the drive plan says so. An alternator's engine is cranked
/// first, just before it charges, unless it runs from the start. Memory: is the source at work, is the engine
/// being cranked.
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
        double starter_S; ///< 0: nothing is cranked
        double cranking_s;
    };

    SupplyLaw(const Values& values, LawContext& context)
        : m_values(values), m_around(context.surroundings()), m_plus(context.node("30")),
          m_minus(context.node("31")),
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
        if (at.time_s >= 0) { // while the vehicle stands before it, charge stays as the Nameplate has it
            equations.add(m_charge, -battery_A);
            equations.addSlope(m_charge, m_plus, conductance_S);
            equations.addSlope(m_charge, m_minus, -conductance_S);
            equations.addSlope(m_charge, m_charge, -conductance_S * emf.slope);
        }

        if (m_values.mayCharge) {
            addCharging(at, equations);
        }
        if (at.memory[1] > 0) {
            equations.addConductance(at, m_plus, m_minus, m_values.starter_S);
        }
    }

    void addMasses(MassMatrix& masses) const override {
        masses.add(m_charge, m_charge, m_values.capacity_C);
        if (m_values.mayCharge) {
            masses.add(m_chargingCurrent, m_chargingCurrent, kRegulatorTime_s);
        }
    }
    void addAccount(const Point& at, Account& account) const override {
        const double terminal_V = at[m_plus] - at[m_minus];
        const double emf_V = openCircuitVoltage_V(at[m_charge]).value;
        const double battery_A = (emf_V - terminal_V) / m_values.resistance_ohm;
        const double charging_A = m_values.mayCharge ? at[m_chargingCurrent] : 0.0;
        account.bringIn(emf_V * battery_A);
        account.giveOff((emf_V - terminal_V) * battery_A);
        account.bringIn(terminal_V * charging_A);
        account.delivered_A += std::abs(battery_A) + std::abs(charging_A);
        account.giveOff(at.memory[1] > 0 ? m_values.starter_S * terminal_V * terminal_V : 0.0);
    }

    std::vector<double> memoryAtStart() const override { return {0, 0}; }
    std::size_t eventCount() const override { return m_values.starter_S > 0 ? 2 : 1; }
    double eventValue(std::size_t event, const Point& at) const override {
        const bool wanted = event == 0 ? m_values.mayCharge && at.surroundings.charging(at.time_s)
                                       : cranking(at.surroundings.plan(), at.time_s);
        return wanted == (at.memory[event] > 0) ? -1 : 1;
    }
    std::string happen(std::size_t event, const Point&, std::span<double> memory) const override {
        memory[event] = 1 - memory[event];
        const bool begins = memory[event] > 0;
        if (event == 1) {
            return begins ? words("cranking begins") : words("cranking ends");
        }
        return begins ? words("charging begins") : words("charging ends");
    }
    double nextDue_s(double now_s, std::span<const double>) const override {
        double next_s = std::numeric_limits<double>::infinity();
        for (const ChargingSpan& span : m_values.starter_S > 0 ? m_around.plan().charging : kNoSpans) {
            const double begin_s = span.from_s - m_values.cranking_s;
            next_s = begin_s > now_s ? std::min(next_s, begin_s) : next_s;
        }
        return next_s;
    }

    std::vector<Probe> probes() const override {
        return {{probe::kCurrent, words("current delivered"), QuantityKind::Current, false, 1e-3}};
    }
    void probeValues(const Point& at, std::span<double> values) const override {
        const double emf_V = openCircuitVoltage_V(at[m_charge]).value;
        values[0] = (emf_V - at[m_plus] + at[m_minus]) / m_values.resistance_ohm;
        values[0] += m_values.mayCharge ? at[m_chargingCurrent] : 0.0;
    }

private:
    inline static const std::vector<ChargingSpan> kNoSpans;

    bool cranking(const DrivePlan& plan, double time_s) const {
        return std::any_of(plan.charging.begin(), plan.charging.end(), [&](const ChargingSpan& span) {
            return span.from_s > 0 && time_s >= span.from_s - m_values.cranking_s && time_s < span.from_s;
        });
    }

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
    const Surroundings& m_around; ///< whose plan may grow
    Unknown m_plus;
    Unknown m_minus;
    Unknown m_charge;
    Unknown m_chargingCurrent = kReference;
};

class SupplyKind final : public PartKind {
public:
    std::string_view id() const override { return "supply"; }
    std::string_view title() const override { return words("Supply"); }
    DrawerGroup group() const override { return DrawerGroup::Supply; }
    std::string_view letter() const override { return "G"; }

    std::vector<TerminalSpec> terminals(const Part&) const override {
        return {{"30", {0, -2}, words("positive pole"), 4}, {"31", {0, 2}, words("negative pole"), 4}};
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
            value(part, "stateOfCharge_share"),
            value(part, "capacity_C"),
            value(part, "internalResistance_ohm"),
            choice(part, "charging") != "none",
            value(part, "chargeVoltage_V"),
            value(part, "chargeLimit_A"),
            value(part, "chargeResistance_ohm"),
            choice(part, "charging") == "alternator" ? value(part, "crankingCurrent_A") / kCranking_V : 0.0,
            value(part, "crankingTime_s")};
        return std::make_unique<SupplyLaw>(values, context);
    }
};

} // namespace

const PartKind& supplyKind() {
    static const SupplyKind kind;
    return kind;
}

} // namespace pumpwright
