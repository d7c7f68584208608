#include "core/parts/armature.h"
#include "core/parts/coil.h"
#include "core/parts/conductor.h"
#include "core/parts/contact.h"
#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"
#include "core/units/text.h"

#include <array>
#include <optional>

namespace pumpwright {
namespace {

constexpr auto kParameters = joined(
    std::array{
        ParameterSpec{"coilResistance_ohm", words("Coil resistance (20 °C)"), QuantityKind::Resistance, 90, 1,
                      1e5, 0.1},
        ParameterSpec{"coilInductance_H", words("Coil inductance"), QuantityKind::Inductance, 0.7, 1e-4, 100},
        ParameterSpec{"strayCapacitance_F", words("Coil stray capacitance"), QuantityKind::Capacitance, 1e-9,
                      1e-12, 1e-6},
        ParameterSpec{"pullInVoltage_V", words("Pulls in at (20 °C)"), QuantityKind::Voltage, 7.2, 0.5, 60,
                      0.1},
        ParameterSpec{"dropOutVoltage_V", words("Drops out at (20 °C)"), QuantityKind::Voltage, 1.6, 0.05, 50,
                      0.3},
        ParameterSpec{"operateTime_s", words("Armature travel, in"), QuantityKind::Time, 0.004, 1e-4, 1, 0.3},
        ParameterSpec{"releaseTime_s", words("Armature travel, out"), QuantityKind::Time, 0.0015, 1e-4, 1,
                      0.3},
        ParameterSpec{"bounceTime_s", words("Make contact bounces for"), QuantityKind::Time, 0, 0, 0.02},
        ParameterSpec{"suppressionResistance_ohm", words("Suppression resistor"), QuantityKind::Resistance,
                      680, 1, 1e5},
        ParameterSpec{"zenerVoltage_V", words("Suppression Zener"), QuantityKind::Voltage, 24, 3, 400}},
    contactParameters({0.005, {40, 120, 40, 20, 1, 1e5}}));

const std::array kChoices{
    ChoiceSpec{"contacts", words("Contacts"), {{"make", words("make")}, {"changeover", words("changeover")}}},
    ChoiceSpec{"suppression",
               words("Across the coil"),
               {{"none", words("nothing")},
                {"diode", words("diode")},
                {"resistor", words("resistor")},
                {"zener", words("diode and Zener")}}},
};

/// [V] at which the rated coil current is stated.
constexpr double kRatedVoltage_V = 12;

Suppression suppressionOf(std::string_view id) {
    if (id == "diode") {
        return Suppression::Diode;
    }
    if (id == "resistor") {
        return Suppression::Resistor;
    }
    return id == "zener" ? Suppression::Zener : Suppression::None;
}

class RelayLaw final : public Law {
public:
    RelayLaw(const CoilElement& coil, const Armature& armature, const ContactElement& make,
             std::optional<ContactElement> breaking)
        : m_coil(coil), m_armature(armature), m_make(make), m_break(breaking) {}

    void addEquations(const Point& at, Equations& equations) const override {
        const ArmatureMemory memory{at.memory};
        m_coil.addEquations(at, equations);
        m_make.addEquations(at, memory.makeConducts(), equations);
        if (m_break) {
            m_break->addEquations(at, memory.breakClosed(), equations);
        }
    }
    void addMasses(MassMatrix& masses) const override {
        m_coil.addMasses(masses);
        m_make.addMasses(masses);
        if (m_break) {
            m_break->addMasses(masses);
        }
    }
    void addAccount(const Point& at, Account& account) const override {
        const ArmatureMemory memory{at.memory};
        m_coil.addAccount(at, account);
        m_make.addAccount(at, memory.makeConducts(), account);
        if (m_break) {
            m_break->addAccount(at, memory.breakClosed(), account);
        }
    }

    std::vector<double> memoryAtStart() const override {
        const auto start = Armature::atStart();
        return {start.begin(), start.end()};
    }
    std::size_t eventCount() const override { return Armature::kEvents; }
    double eventValue(std::size_t event, const Point& at) const override {
        return m_armature.eventValue(event, m_coil.current_A(at), at.time_s, {at.memory});
    }
    std::string happen(std::size_t event, const Point& at, std::span<double> memory) const override {
        return m_armature.happen(event, at.time_s, memory);
    }
    double nextDue_s(double, std::span<const double> memory) const override {
        return Armature::due_s({memory});
    }

    std::vector<Probe> probes() const override {
        std::vector<Probe> probes{
            {probe::kCoilCurrent, words("coil current"), QuantityKind::Current, false, 1e-4},
            {probe::kCoilVoltage, words("coil voltage"), QuantityKind::Voltage, false, 0.01},
            {probe::kEnergised, words("armature in"), QuantityKind::Number, true, 0.5},
        };
        for (const std::string_view name : {"", "30-87a"}) {
            if (name.empty() || m_break) {
                const auto contact = contactProbes(name);
                probes.insert(probes.end(), contact.begin(), contact.end());
            }
        }
        return probes;
    }
    void probeValues(const Point& at, std::span<double> values) const override {
        const ArmatureMemory memory{at.memory};
        values[0] = m_coil.current_A(at);
        values[1] = m_coil.voltage_V(at);
        values[2] = memory.state() == ArmatureMemory::In ? 1 : 0;
        values[3] = memory.makeClosed() ? 1 : 0;
        values[4] = m_make.current_A(at, memory.makeConducts());
        if (m_break) {
            values[5] = memory.breakClosed() ? 1 : 0;
            values[6] = m_break->current_A(at, memory.breakClosed());
        }
    }

private:
    CoilElement m_coil;
    Armature m_armature;
    ContactElement m_make;
    std::optional<ContactElement> m_break;
};

class RelayKind final : public PartKind {
public:
    std::string_view id() const override { return "relay"; }
    std::string_view title() const override { return words("Relay"); }
    DrawerGroup group() const override { return DrawerGroup::Control; }
    std::string_view letter() const override { return "K"; }

    std::vector<TerminalSpec> terminals(const Part& part) const override {
        std::vector<TerminalSpec> terminals{{"86", {-3, -3}, words("coil, + side")},
                                            {"85", {-3, 3}, words("coil, − side")},
                                            {"30", {2, -3}, words("contact, common")},
                                            {"87", {1, 3}, words("make contact")}};
        if (changeover(part)) {
            terminals.push_back({"87a", {3, 3}, words("break contact")});
        }
        return terminals;
    }
    std::span<const ParameterSpec> parameters() const override { return kParameters; }
    std::span<const ChoiceSpec> choices() const override { return kChoices; }

    Features features(const Part& part) const override {
        Features features;
        const double resistance_ohm = value(part, "coilResistance_ohm");
        const double rated_A = kRatedVoltage_V / resistance_ohm;
        features.paths = {{"86", "85"}, {"30", "87", false, true}};
        features.coils = {coil(part)};
        features.loads = {{"86", "85", LoadSort::Coil, rated_A, rated_A}};
        features.contacts = {contactFeature(*this, part, "30", "87", Operator::Coil)};
        if (changeover(part)) {
            Contact breaking = contactFeature(*this, part, "30", "87a", Operator::Coil);
            breaking.name = "30-87a";
            breaking.closedAtRest = true;
            features.contacts.push_back(breaking);
            features.paths.push_back({"30", "87a", false, true});
            features.optionalTerminals = {"87a", "87"};
        }
        return features;
    }

    std::unique_ptr<Law> law(const Part& part, LawContext& context) const override {
        // The winding has the temperature of its surroundings; pull-in and drop-out are currents.
        const double warm = copperWarmShare(context.surroundings().ambientTemperature_K());
        const Coil facts = coil(part);
        const CoilValues values{facts.resistance_ohm * warm,
                                facts.inductance_H,
                                facts.strayCapacitance_F,
                                facts.suppression,
                                value(part, "suppressionResistance_ohm"),
                                value(part, "zenerVoltage_V")};
        const CoilElement winding(values, context.node("86"), context.node("85"), context);
        const Armature armature({facts.pullIn_A, facts.dropOut_A, value(part, "operateTime_s"),
                                 value(part, "releaseTime_s"), value(part, "bounceTime_s")});
        const Unknown common = context.node("30");
        std::optional<ContactElement> breaking;
        if (changeover(part)) {
            breaking = contactElement(*this, part, common, context.node("87a"));
        }
        return std::make_unique<RelayLaw>(winding, armature,
                                          contactElement(*this, part, common, context.node("87")), breaking);
    }

private:
    bool changeover(const Part& part) const { return choice(part, "contacts") == "changeover"; }

    Coil coil(const Part& part) const {
        Coil coil;
        coil.plus = "86";
        coil.minus = "85";
        coil.resistance_ohm = value(part, "coilResistance_ohm");
        coil.inductance_H = value(part, "coilInductance_H");
        coil.strayCapacitance_F = value(part, "strayCapacitance_F");
        coil.pullIn_A = value(part, "pullInVoltage_V") / coil.resistance_ohm;
        coil.dropOut_A = value(part, "dropOutVoltage_V") / coil.resistance_ohm;
        coil.suppression = suppressionOf(choice(part, "suppression"));
        return coil;
    }
};

} // namespace

const PartKind& relayKind() {
    static const RelayKind kind;
    return kind;
}

} // namespace pumpwright
