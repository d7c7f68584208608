#pragma once

#include "core/circuit/circuit.h"
#include "core/parts/probe.h"

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace pumpwright {

/// Whose quantity a channel holds. For Terminal and Port the name is the terminal's or port's.
enum class Subject { Part, Terminal, Port, Wire, Hose };

/// Which quantity: {Wire, "w3", probe::kCurrent}, or {Terminal, "p4", "86"} for its voltage against the
/// reference node, or {Port, "p9", "vacuum"} for the gauge vacuum at that port.
struct ChannelKey {
    Subject subject = Subject::Part;
    std::string id;
    std::string name;
    friend auto operator<=>(const ChannelKey&, const ChannelKey&) = default;
};

struct Extremes {
    double lowest;
    double highest;
};

/// One quantity over time: samples such that straight lines (steps, for a stepped channel) between them stay
/// within the channel's resolution of every value that the engine computed.
class Channel {
public:
    ChannelKey key;
    Probe probe;
    std::vector<double> times_s; ///< rising; two equal times are a jump
    std::vector<float> values;   ///< SI

    /// The value at a time of the drive, O(log n); before the first and after the last sample, that sample's.
    double at(double time_s) const;
    /// Lowest and highest value from `from_s` to `to_s`.
    Extremes extremes(double from_s, double to_s) const;
    /// Time average from `from_s` to `to_s`.
    double mean(double from_s, double to_s) const;
};

/// Something that happened at an instant.
struct DriveEvent {
    double time_s = 0;
    Subject subject = Subject::Part; ///< Part or Wire
    std::string id;
    std::string what; ///< "contacts close"
};

/// Everything that a run keeps.
class Recording {
public:
    double duration_s = 0;          ///< up to where the run came
    std::vector<Channel> channels;  ///< sorted by key
    std::vector<DriveEvent> events; ///< in order of time

    const Channel* find(const ChannelKey& key) const;
    const Channel* part(const PartId& id, std::string_view probeName) const;
    const Channel* wire(const WireId& id, std::string_view probeName) const;
    const Channel* terminal(const End& end) const; ///< voltage
    const Channel* port(const End& end) const;     ///< gauge vacuum
    std::size_t bytes() const;
};

} // namespace pumpwright
