#pragma once

#include "core/circuit/drive_plan.h"
#include "core/circuit/edit.h"
#include "core/circuit/ids.h"
#include "core/circuit/tolerance.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace pumpwright {

/// A place on the sheet in grid steps of 5 mm; x to the right, y down.
struct GridPoint {
    int x = 0;
    int y = 0;
    friend bool operator==(const GridPoint&, const GridPoint&) = default;
};

/// How far the texts of something on the sheet were moved; x to the right, y down.
struct LabelOffset {
    int x_mm = 0;
    int y_mm = 0;
    friend bool operator==(const LabelOffset&, const LabelOffset&) = default;
};

/// Something placed on the sheet. What it is and how it behaves is said by its part kind (core/parts), which
/// also names the values and choices that it may carry; what is missing here has the kind's default.
struct Part {
    std::string kind;      ///< id of the part kind, "relay"
    std::string reference; ///< letter code and number after IEC 81346-2, "K1"
    std::string label;     ///< free text beside the symbol
    std::string catalogue; ///< id of the catalogue entry that it was placed from, or empty
    std::string note;      ///< where the values come from
    double price = 0;      ///< in the circuit's currency
    std::string place;     ///< where in the vehicle: id of a place in core/parts/place.h, empty: not stated
    std::string ingress;   ///< protection code after IEC 60529, "IP65", empty: not stated
    double ratedTemperature_K = 358.15; ///< hottest surroundings that it stands
    GridPoint at;
    int quarterTurns = 0; ///< 0…3, clockwise
    bool mirrored = false;
    std::optional<LabelOffset> labelFrom = {}; ///< middle of its texts from `at`; none: placed by the program
    std::map<std::string, double> values;      ///< SI, by parameter key ("coilResistance_ohm")
    std::map<std::string, std::string> choices;  ///< by choice key ("suppression": "diode")
    std::map<std::string, Tolerance> tolerances; ///< by parameter key; what is missing has the kind's own
    UnknownKeys unknown;
    friend bool operator==(const Part&, const Part&) = default;
};

/// One end of a wire or hose: a terminal or port of a part.
struct End {
    PartId part;
    std::string terminal;
    friend auto operator<=>(const End&, const End&) = default;
};

/// An insulated conductor from terminal to terminal.
struct Wire {
    std::string reference; ///< "W1"
    End from;
    End to;
    std::string colour = "BK"; ///< letters after IEC 60757, "RD" or "RDBU"
    double area_m2 = 1.5e-6;
    double length_m = 1.0;
    std::string insulation = "T105"; ///< id of an insulation class in core/parts/conductor.h
    int bundled = 1;                 ///< loaded conductors in the same bundle, this one included
    bool sheathed = false;           ///< all the way in a sheath or conduit
    double price_perMetre = 0;       ///< in the circuit's currency
    std::vector<GridPoint> bends;    ///< fixed corners of the drawn route, empty: routed by the program
    std::optional<LabelOffset> labelFrom =
        {}; ///< from the middle between its ends; none: placed by the program
    UnknownKeys unknown;
    friend bool operator==(const Wire&, const Wire&) = default;
};

/// A vacuum hose from port to port.
struct Hose {
    std::string reference; ///< "H1"
    End from;
    End to;
    double innerDiameter_m = 0.009;
    double length_m = 0.5;
    double leakHole_m = 0; ///< equivalent hole in its wall, at the `from` end; 0: tight
    double price_perMetre = 0;
    std::vector<GridPoint> bends;
    std::optional<LabelOffset> labelFrom = {}; ///< as of a wire
    UnknownKeys unknown;
    friend bool operator==(const Hose&, const Hose&) = default;
};

/// Fields of the title block, after ISO 7200.
struct TitleBlock {
    std::string title;
    std::string vehicle;
    std::string owner;
    std::string identification;
    std::string revision;
    std::string date; ///< ISO 8601 calendar date
    std::string creator;
    std::string approver;
    UnknownKeys unknown = {};
    friend bool operator==(const TitleBlock&, const TitleBlock&) = default;
};

/// A finding that somebody accepted, and why.
struct Waiver {
    std::string rule;                  ///< rule id
    std::vector<std::string> subjects; ///< part, wire and hose ids, sorted
    std::string reason;
    std::string initials;
    double value = 0; ///< the finding's value when it was waived
    UnknownKeys unknown = {};
    friend bool operator==(const Waiver&, const Waiver&) = default;
};

/// Limits of this project that rules compare with; defaults are stated with their source in core/checks.
struct ProjectLimits {
    double ambient_K = 323.15;         ///< where the wires lie
    double voltageDropShare = 0.10;    ///< of the supply voltage, at running current
    double continuousFuseShare = 0.80; ///< of a fuse's rating, carried for long
    int leastBundled = 1;              ///< every wire counts as one of at least so many in its bundle
    double lowestSupply_V = 10.5;      ///< at which everything must still work
    double parked_s = 1'209'600;       ///< that the vehicle stands without charging
    double drivenPerYear_s = 1'080'000;
    int reservePresses = 2; ///< with assist, after the pump has died
    UnknownKeys unknown;
    friend bool operator==(const ProjectLimits&, const ProjectLimits&) = default;
};

/// A named change to the circuit, compared with it.
struct Trial {
    std::string name;
    Edit edit;
    UnknownKeys unknown = {};
    friend bool operator==(const Trial&, const Trial&) = default;
};

/// The document: everything that a circuit file holds. A value; copies are independent.
struct Circuit {
    TitleBlock title;
    std::string currency = "EUR";           ///< ISO 4217
    ProjectLimits limits = ProjectLimits(); // g++ 12 warns of an uninitialised map without it; there is none
    std::map<PartId, Part> parts;
    std::map<WireId, Wire> wires;
    std::map<HoseId, Hose> hoses;
    DrivePlan plan;
    std::map<std::string, Trial> trials;
    std::vector<Waiver> waivers;
    UnknownKeys unknown;
    friend bool operator==(const Circuit&, const Circuit&) = default;
};

} // namespace pumpwright
