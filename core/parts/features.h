#pragma once

#include "core/parts/fuse_band.h"
#include "core/parts/timer_function.h"

#include <optional>
#include <string>
#include <vector>

namespace pumpwright {

/// What a contact may carry and switch. [A]; zero where the maker says nothing.
struct ContactRating {
    double continuous_A = 0;
    double make_A = 0;           ///< peak when closing
    double breakResistive_A = 0; ///< when opening, L/R up to 1 ms
    double breakInductive_A = 0; ///< when opening, motor or coil
    double minimum_A = 0;        ///< below it the contact does not stay clean
    double operations = 0;       ///< electrical life at its continuous rating
};

/// What moves a contact.
enum class Operator { Hand, Pedal, Vacuum, Coil, Electronics, None };

/// A contact, or a semiconductor that stands for one. `name` is the tail of its probes: "contact 30-87".
struct Contact {
    std::string name;
    std::string from;
    std::string to;
    bool closedAtRest = false;
    bool semiconductor = false;
    double inductiveShare = 1; ///< of the rating that is left with a motor or coil as load
    double resistiveShare =
        1; ///< of the rating that is left with a resistive load, heat sink and ambient counted
    ContactRating rating{};
    Operator by = Operator::None;
    double withstand_V = 0;             ///< open, until it breaks down
    double leakage_A = 0;               ///< of a semiconductor that is off
    double onResistance_ohm = 0;        ///< of a semiconductor at 25 °C
    double thermalResistance_KperW = 0; ///< of a semiconductor, junction to surroundings, heat sink included
};

/// What stands across a coil inside the part.
enum class Suppression { None, Diode, Resistor, Zener };

struct Coil {
    std::string plus; ///< terminal that must be positive where the coil is polarised
    std::string minus;
    double resistance_ohm = 0; ///< at 20 °C
    double inductance_H = 0;
    double strayCapacitance_F = 0;
    double pullIn_A = 0;
    double dropOut_A = 0;
    Suppression suppression = Suppression::None;
    bool plusGoesToMinus = true; ///< false: a built-in diode or a polarised input stands the other way round
};

enum class LoadSort { Resistive, Motor, Lamp, Coil, Electronic };

/// Something that uses current on purpose.
struct Load {
    std::string from;
    std::string to;
    LoadSort sort = LoadSort::Resistive;
    double running_A = 0;
    double inrush_A = 0;
    double minimum_V = 0; ///< with less it does not do its work; zero where the maker says nothing
};

/// An input that acts on a voltage.
struct ControlInput {
    std::string plus;
    std::string minus;
    double on_V = 0;
    double off_V = 0;
    double current_A = 0;      ///< that it takes, where that hardly depends on the voltage
    double resistance_ohm = 0; ///< else
};

/// Two terminals that must lie with the first one towards plus.
struct Polarity {
    std::string plus;
    std::string minus;
};

/// What a timer does with its trigger.
struct Timing {
    TimerFunction function = TimerFunction::DelayOnRelease;
    bool retriggerable = true;
    double delay_s = 0;
    std::string trigger;
    std::string supplyPlus;
};

/// Two terminals between which current can flow in some state of the part.
/// `oneWay`: only from `from` to `to`. `joins`: with next to no resistance (fuse, closed contact, plug).
struct CurrentPath {
    std::string from;
    std::string to;
    bool oneWay = false;
    bool joins = false;
};

struct FuseRating {
    std::string from;
    std::string to;
    double rating_A = 0;
    double breaking_A = 0;
    double voltage_V = 0;
    FuseType type = FuseType::C;
};

struct Source {
    std::string plus;
    std::string minus;
    double emf_V = 0;
    double resistance_ohm = 0;
    double capacity_C = 0;
    double chargeLimit_A = 0; ///< zero where nothing charges it
    double vehicleLoad_A = 0; ///< that it feeds beside what is drawn
};

/// A diode as a part of its own.
struct Rectifier {
    std::string anode;
    std::string cathode;
    double continuous_A = 0;
    double reverse_V = 0;
    bool zener = false;
    double surge_A = 0; ///< for some milliseconds
};

/// Something that stores charge; no direct current flows through it.
struct Storage {
    std::string plus; ///< must be the positive one where it is polarised
    std::string minus;
    double capacitance_F = 0;
    bool polarised = false;
    double esr_ohm = 0;
};

/// What a motor that pumps is sold for.
struct PumpRating {
    std::string inlet;
    double ultimateShare = 0;           ///< lowest pressure as a share of the ambient pressure
    double ultimateTolerance_share = 0; ///< that it may be worse by, of the ambient pressure
    double duty_share = 0;              ///< of any ten minutes
    double startsPerHour = 0;
};

/// A brake booster with its pedal, at rest.
struct BoosterFacts {
    std::string port;
    double area_m2 = 0;
    double vacuumVolume_m3 = 0;
    double workingVolume_m3 = 0;
    double travelMax_m = 0;
    double fullTravelForce_N = 0;
    double boostRatio = 0;
    double pedalRatio = 0;
    double cutIn_N = 0;
    double springForce_N = 0;
    double springRate_Npm = 0;
};

/// Ports between which air can flow: both ways, or only from `from` to `to`.
struct AirWay {
    std::string from;
    std::string to;
    bool oneWay = false;
};

/// What joins a wire to the terminals of a part.
enum class Fitting {
    Blade,  ///< a receptacle on a blade
    Stud,   ///< a ring under a nut or screw
    Pin,    ///< a contact crimped for a plug
    Splice, ///< wires crimped to each other, or to the lead of a small part
};

/// The trade's view of a part: what rules, canvas and sheet may know without asking which kind it is.
struct Features {
    std::vector<CurrentPath> paths;
    std::vector<Contact> contacts;
    std::vector<Coil> coils;
    std::vector<Load> loads;
    std::optional<FuseRating> fuse;
    std::optional<Source> source;
    std::optional<Rectifier> rectifier;
    std::optional<Storage> storage;
    std::vector<ControlInput> inputs;
    std::vector<Polarity> polarities;
    std::optional<Timing> timing;
    std::optional<PumpRating> pump;
    std::optional<BoosterFacts> booster;
    std::vector<AirWay> airWays;
    std::string sensingPort;    ///< whose vacuum moves the part's contact
    bool ground = false;        ///< joined with every other ground point
    bool mayStandAlone = false; ///< no finding if its terminals are open (a spare connector pin)
    std::vector<std::string> optionalTerminals; ///< may be left open: 87a
    std::vector<std::string> setPoints; ///< parameter keys that the builder sets, printed as set points
    Fitting fitting = Fitting::Blade;
};

} // namespace pumpwright
