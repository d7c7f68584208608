#include "core/checks/control_input.h"

namespace pumpwright {

std::vector<InputPath> inputPaths(const Survey& survey) {
    std::vector<InputPath> paths;
    for (const LoadPath& path : survey.loadPaths()) {
        for (const ControlInput& input : survey.features(path.part).inputs) {
            if (path.source && path.load.from == input.plus && path.load.to == input.minus) {
                paths.push_back({&path, &input});
            }
        }
    }
    return paths;
}

} // namespace pumpwright
