#include "core/checks/finding.h"

#include <algorithm>

namespace pumpwright {

std::string_view signalWordName(SignalWord word) {
    switch (word) {
    case SignalWord::Danger:
        return words("DANGER");
    case SignalWord::Warning:
        return words("WARNING");
    case SignalWord::Caution:
        return words("CAUTION");
    case SignalWord::Notice:
        return words("NOTICE");
    }
    return words("NOTICE");
}

std::vector<std::string> Finding::subjects() const {
    std::vector<std::string> ids;
    for (const PartId& id : parts) {
        ids.push_back(id.text);
    }
    for (const WireId& id : wires) {
        ids.push_back(id.text);
    }
    for (const HoseId& id : hoses) {
        ids.push_back(id.text);
    }
    std::sort(ids.begin(), ids.end());
    return ids;
}

} // namespace pumpwright
