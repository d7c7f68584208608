#pragma once

#include "core/circuit/circuit.h"

#include <string>
#include <vector>

namespace pumpwright {

/// One terminal of a socket, `x` to the right and `y` down, both 0…1 over the socket.
struct SocketPin {
    std::string number;
    std::string meaning; ///< "coil, + side"
    std::string wires;   ///< "W3 RD 2.5 mm² to F1:2"
    double x = 0;
    double y = 0;
};

/// What is plugged where at a relay, timer or the like.
struct SocketView {
    std::string title;
    std::string note; ///< from where it is seen
    std::vector<SocketPin> pins;
};

/// Of every part that switches one current by another, in the order of references.
std::vector<SocketView> socketViews(const Circuit& circuit);

} // namespace pumpwright
