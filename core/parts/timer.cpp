#include "core/parts/contact.h"
#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"
#include "core/parts/saturation.h"
#include "core/parts/timer_function.h"
#include "core/units/text.h"

#include <algorithm>
#include <array>

namespace pumpwright {
namespace {

constexpr auto kParameters = joined(
    std::array{ParameterSpec{"delay_s", words("Set time"), QuantityKind::Time, 5, 0.01, 36000, 0.1},
               ParameterSpec{"triggerOn_V", words("Trigger on at"), QuantityKind::Voltage, 6, 0.5, 30, 0.1},
               ParameterSpec{"triggerOff_V", words("Trigger off at"), QuantityKind::Voltage, 3, 0.1, 29, 0.1},
               ParameterSpec{"triggerResistance_ohm", words("Trigger input resistance"),
                             QuantityKind::Resistance, 10e3, 100, 1e7},
               ParameterSpec{"ownCurrent_A", words("Own current"), QuantityKind::Current, 0.02, 1e-4, 1},
               ParameterSpec{"minimumSupply_V", words("Works down to"), QuantityKind::Voltage, 8, 1, 30},
               ParameterSpec{"operateTime_s", words("Inner relay's operate time"), QuantityKind::Time, 0.005,
                             1e-4, 0.1}},
    contactParameters({0.01, {5, 10, 5, 2, 0.1, 1e5}}));

const std::array kChoices{
    ChoiceSpec{"function",
               words("Function (IEC 61812-1)"),
               {{"delay-on-release", words("delay on release")},
                {"single-shot", words("single shot")},
                {"delay-on-make", words("delay on make")}}},
    ChoiceSpec{"retriggerable",
               words("New trigger during the delay"),
               {{"yes", words("starts the time anew")}, {"no", words("is ignored")}}},
};

/// [V] below which the timer's own current fades away.
constexpr double kOwnCurrentKnee_V = 1.5;
/// [V] nominal, at which a trigger's current is stated.
constexpr double kRatedVoltage_V = 12;

class TimerLaw final : public Law {
public:
    TimerLaw(const TimerLogic& logic, const ContactElement& contact, double ownCurrent_A,
             double triggerResistance_ohm, LawContext& context)
        : m_logic(logic), m_contact(contact), m_plus(context.node("15")), m_minus(context.node("31")),
          m_trigger(context.node("S")), m_ownCurrent_A(ownCurrent_A),
          m_triggerConductance_S(1 / triggerResistance_ohm) {}

    void addEquations(const Point& at, Equations& equations) const override {
        const SmoothValue own = smoothOnset(at[m_plus] - at[m_minus], kOwnCurrentKnee_V);
        equations.addCurrent(m_plus, m_minus, m_ownCurrent_A * own.value);
        equations.addCurrentSlope(m_plus, m_minus, m_plus, m_ownCurrent_A * own.slope);
        equations.addCurrentSlope(m_plus, m_minus, m_minus, -m_ownCurrent_A * own.slope);
        equations.addConductance(at, m_plus, m_minus, kLeak_S);
        equations.addConductance(at, m_trigger, m_minus, m_triggerConductance_S);
        m_contact.addEquations(at, TimerMemory{at.memory}.contactClosed(), equations);
    }
    void addMasses(MassMatrix& masses) const override { m_contact.addMasses(masses); }
    void addAccount(const Point& at, Account& account) const override {
        const double supply_V = at[m_plus] - at[m_minus];
        const double trigger_V = at[m_trigger] - at[m_minus];
        account.giveOff(supply_V * m_ownCurrent_A * smoothOnset(supply_V, kOwnCurrentKnee_V).value +
                        kLeak_S * supply_V * supply_V + m_triggerConductance_S * trigger_V * trigger_V);
        m_contact.addAccount(at, TimerMemory{at.memory}.contactClosed(), account);
    }

    std::vector<double> memoryAtStart() const override {
        const auto start = TimerLogic::atStart();
        return {start.begin(), start.end()};
    }
    std::size_t eventCount() const override { return TimerLogic::kEvents; }
    double eventValue(std::size_t event, const Point& at) const override {
        return m_logic.eventValue(event, at[m_plus] - at[m_minus], at[m_trigger] - at[m_minus], at.time_s,
                                  {at.memory});
    }
    std::string happen(std::size_t event, const Point& at, std::span<double> memory) const override {
        return m_logic.happen(event, at.time_s, memory);
    }
    double nextDue_s(double, std::span<const double> memory) const override {
        return TimerLogic::nextDue_s({memory});
    }

    std::vector<Probe> probes() const override {
        std::vector<Probe> probes{{probe::kEnergised, words("output on"), QuantityKind::Number, true, 0.5},
                                  {probe::kRemaining, words("delay left"), QuantityKind::Time, false, 0.01}};
        const auto contact = contactProbes();
        probes.insert(probes.end(), contact.begin(), contact.end());
        return probes;
    }
    void probeValues(const Point& at, std::span<double> values) const override {
        const TimerMemory memory{at.memory};
        values[0] = memory.outputOn() ? 1 : 0;
        values[1] = memory.running() ? std::max(0.0, memory.delayDue_s() - at.time_s) : 0.0;
        values[2] = memory.contactClosed() ? 1 : 0;
        values[3] = m_contact.current_A(at, memory.contactClosed());
    }

private:
    /// [S] so that an unconnected supply terminal does not float.
    static constexpr double kLeak_S = 1e-9;

    TimerLogic m_logic;
    ContactElement m_contact;
    Unknown m_plus;
    Unknown m_minus;
    Unknown m_trigger;
    double m_ownCurrent_A;
    double m_triggerConductance_S;
};

class TimerKind final : public PartKind {
public:
    std::string_view id() const override { return "timer"; }
    std::string_view title() const override { return words("Timer"); }
    DrawerGroup group() const override { return DrawerGroup::Control; }
    std::string_view letter() const override { return "K"; }

    std::vector<TerminalSpec> terminals(const Part&) const override {
        return {{"15", {-3, -3}, words("own supply, +")},
                {"31", {-3, 3}, words("own supply, −")},
                {"S", {-5, 0}, words("trigger, + starts")},
                {"30", {2, -3}, words("contact")},
                {"87", {2, 3}, words("make contact")}};
    }
    std::span<const ParameterSpec> parameters() const override { return kParameters; }
    std::span<const ChoiceSpec> choices() const override { return kChoices; }

    Features features(const Part& part) const override {
        Features features;
        const double own_A = value(part, "ownCurrent_A");
        const double trigger_A = kRatedVoltage_V / value(part, "triggerResistance_ohm");
        features.paths = {{"15", "31"}, {"S", "31"}, {"30", "87", false, true}};
        features.loads = {{"15", "31", LoadSort::Electronic, own_A, own_A},
                          {"S", "31", LoadSort::Electronic, trigger_A, trigger_A}};
        features.loads[0].minimum_V = value(part, "minimumSupply_V");
        features.contacts = {contactFeature(*this, part, "30", "87", Operator::Electronics)};
        features.inputs = {{"S", "31", value(part, "triggerOn_V"), value(part, "triggerOff_V"), 0,
                            value(part, "triggerResistance_ohm")}};
        features.polarities = {{"15", "31"}};
        features.timing = Timing{timerFunction(choice(part, "function")),
                                 choice(part, "retriggerable") == "yes", value(part, "delay_s"), "S", "15"};
        features.setPoints = {"delay_s"};
        return features;
    }

    std::unique_ptr<Law> law(const Part& part, LawContext& context) const override {
        const TimerLogic logic({timerFunction(choice(part, "function")),
                                choice(part, "retriggerable") == "yes", value(part, "delay_s"),
                                value(part, "operateTime_s"), value(part, "triggerOn_V"),
                                value(part, "triggerOff_V"), value(part, "minimumSupply_V")});
        const ContactElement contact = contactElement(*this, part, context.node("30"), context.node("87"));
        return std::make_unique<TimerLaw>(logic, contact, value(part, "ownCurrent_A"),
                                          value(part, "triggerResistance_ohm"), context);
    }
};

} // namespace

const PartKind& timerKind() {
    static const TimerKind kind;
    return kind;
}

} // namespace pumpwright
