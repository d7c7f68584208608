#pragma once

#include "core/circuit/circuit.h"
#include "core/parts/failure.h"
#include "core/parts/features.h"
#include "core/parts/law.h"
#include "core/units/quantity_kind.h"

#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace pumpwright {

/// Where a kind stands in the Parts drawer.
enum class DrawerGroup { Supply, Protection, Control, Sensing, Suppression, Load, Vacuum, Connection };

/// A connection point for a wire. `at` is relative to the part's origin, unturned, in grid steps.
struct TerminalSpec {
    std::string name; ///< DIN 72552 number where it defines one
    GridPoint at;
    std::string meaning; ///< for people: "coil, + side"
    int takes = 2;       ///< wires that it holds: a blade takes one crimp with two
};

/// A connection point for a hose.
using PortSpec = TerminalSpec;

/// A value on the Nameplate. The key carries the SI unit: "coilResistance_ohm".
struct ParameterSpec {
    std::string_view key;
    std::string_view label;
    QuantityKind kind;
    double standard; ///< used where the part says nothing [SI]
    double low;      ///< smallest and largest value that is accepted [SI]
    double high;
    double tolerance = 0; ///< share by which new parts are usually off, to both sides; 0: as stated
};

/// A choice on the Nameplate. The first option is the default.
struct ChoiceSpec {
    struct Option {
        std::string_view id;
        std::string_view label;
    };
    std::string_view key;
    std::string_view label;
    std::vector<Option> options;
};

/// One kind of part: its connection points, what its Nameplate holds, what rules may know of it, and its law.
/// Kinds are immutable and live as long as the program.
class PartKind {
public:
    virtual ~PartKind() = default;

    virtual std::string_view id() const = 0;    ///< stored in files: "relay"
    virtual std::string_view title() const = 0; ///< for people: "Relay"
    virtual DrawerGroup group() const = 0;
    virtual std::string_view letter() const = 0; ///< IEC 81346-2 letter code

    virtual std::vector<TerminalSpec> terminals(const Part& part) const = 0;
    virtual std::vector<PortSpec> ports(const Part&) const { return {}; }
    virtual std::span<const ParameterSpec> parameters() const = 0;
    virtual std::span<const ChoiceSpec> choices() const { return {}; }

    /// What rules, canvas and sheet may know: contacts, coils, loads, current paths.
    virtual Features features(const Part& part) const = 0;
    /// How a part of this kind may fail. Unless the kind says otherwise, what its features lead to:
    /// failuresFromFeatures().
    virtual std::vector<Failure> failures(const Part& part) const;
    /// The law of one part of this kind; `part` outlives the call only.
    virtual std::unique_ptr<Law> law(const Part& part, LawContext& context) const = 0;

    /// The part's own value for the key, or the kind's default. The key must be one of parameters().
    double value(const Part& part, std::string_view key) const;
    /// The part's own tolerance of a parameter, or the kind's.
    Tolerance tolerance(const Part& part, std::string_view key) const;
    /// The part's own choice, or the first option.
    std::string_view choice(const Part& part, std::string_view key) const;

protected:
    /// The effect that a value grows by a factor, as far as its range goes.
    SetsValue scaled(const Part& part, std::string_view key, double factor) const;
};

/// All kinds, in the order of the Parts drawer.
std::span<const PartKind* const> partKinds();

/// The kind with this id, or nullptr.
const PartKind* findPartKind(std::string_view id);

/// The kind of a part whose id is known to be good (files and edits see to that).
const PartKind& kindOf(const Part& part);

/// A new part of the kind with nothing but its defaults.
Part newPart(const PartKind& kind, std::string reference, GridPoint at);

/// Laws of the connections.
std::unique_ptr<Law> wireLaw(const Wire& wire, Unknown from, Unknown to, LawContext& context);
std::unique_ptr<Law> hoseLaw(const Hose& hose, GasNode from, GasNode to, LawContext& context);

} // namespace pumpwright
