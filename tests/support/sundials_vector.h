#pragma once

#include <nvector/nvector_serial.h>

#include <algorithm>
#include <vector>

namespace pumpwright::test {

/// A vector of SUNDIALS with these values, to be given back with N_VDestroy().
inline N_Vector vectorOf(const std::vector<double>& values, SUNContext context) {
    N_Vector vector = N_VNew_Serial(static_cast<sunindextype>(values.size()), context);
    std::copy(values.begin(), values.end(), N_VGetArrayPointer(vector));
    return vector;
}

} // namespace pumpwright::test
