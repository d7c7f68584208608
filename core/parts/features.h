#pragma once

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
};

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
};

struct Source {
    std::string plus;
    std::string minus;
    double emf_V = 0;
    double resistance_ohm = 0;
};

/// A diode as a part of its own.
struct Rectifier {
    std::string anode;
    std::string cathode;
    double continuous_A = 0;
    double reverse_V = 0;
    bool zener = false;
};

/// Something that stores charge; no direct current flows through it.
struct Storage {
    std::string plus; ///< must be the positive one where it is polarised
    std::string minus;
    double capacitance_F = 0;
    bool polarised = false;
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
    bool ground = false;        ///< joined with every other ground point
    bool mayStandAlone = false; ///< no finding if its terminals are open (a spare connector pin)
    std::vector<std::string> optionalTerminals; ///< may be left open: 87a
    std::vector<std::string> setPoints; ///< parameter keys that the builder sets, printed as set points
    Fitting fitting = Fitting::Blade;
};

} // namespace pumpwright
