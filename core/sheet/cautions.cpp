#include "core/sheet/wiring_sheet.h"
#include "core/units/text.h"

namespace pumpwright {

const std::vector<std::string>& cautions() {
    static const std::vector<std::string> texts{
        words("Brakes are safety-critical: a fault in this circuit can cost lives."),
        words("The results of this program are estimates from the values entered; they prove nothing about a "
              "vehicle."),
        words("Have the finished work inspected by a qualified person before the vehicle is driven."),
        words("Local roadworthiness law decides whether the vehicle may be used on the road."),
        words("Test with the vehicle stationary first, wheels chocked, before any test at low speed."),
        words("Disconnect the battery before wiring, and connect it last."),
    };
    return texts;
}

} // namespace pumpwright
