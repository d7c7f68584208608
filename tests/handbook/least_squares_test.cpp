// Statistical Reference Datasets for nonlinear regression, NIST, https://www.itl.nist.gov/div898/strd: data,
// starts and certified values from memory of that collection. They confirm themselves: with one digit of the
// data wrong, no fit would come to the certified digits.

#include "core/study/least_squares.h"
#include "tests/support/catch.h"

#include <cmath>

using namespace pumpwright;
using Catch::WithinRel;

namespace {

using Values = std::vector<double>;

struct Certified {
    double value;
    double standardError;
};

struct Dataset {
    std::string name;
    Values x;
    Values y;
    double (*model)(double x, const Values& b);
    std::vector<Values> starts; ///< the collection's first and second
    std::vector<Certified> certified;
    double squares;
};

Values steps(double from, double by, std::size_t count) {
    Values x;
    for (std::size_t i = 0; i < count; ++i) {
        x.push_back(from + by * static_cast<double>(i));
    }
    return x;
}

const std::vector<Dataset> kDatasets{
    {"Misra1a",
     {77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0},
     {10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78},
     [](double x, const Values& b) { return b[0] * (1 - std::exp(-b[1] * x)); },
     {{500, 1e-4}, {250, 5e-4}},
     {{2.3894212918e2, 2.7070075241}, {5.5015643181e-4, 7.2668688436e-6}},
     1.2455138894e-1},
    {"DanWood",
     {1.309, 1.471, 1.490, 1.565, 1.611, 1.680},
     {2.138, 3.421, 3.597, 4.340, 4.882, 5.660},
     [](double x, const Values& b) { return b[0] * std::pow(x, b[1]); },
     {{1, 5}, {0.7, 4}},
     {{7.6886226176e-1, 1.8281973860e-2}, {3.8604055871, 5.1726610913e-2}},
     4.3173084083e-3},
    {"BoxBOD",
     {1, 2, 3, 5, 7, 10},
     {109, 149, 149, 191, 213, 224},
     [](double x, const Values& b) { return b[0] * (1 - std::exp(-b[1] * x)); },
     {{1, 1}, {100, 0.75}},
     {{2.1380940889e2, 1.2354515176e1}, {5.4723748542e-1, 1.0455993237e-1}},
     1.1680088766e3},
    {"Rat42",
     {9, 14, 21, 28, 42, 57, 63, 70, 79},
     {8.930, 10.800, 18.590, 22.330, 39.350, 56.110, 61.730, 64.620, 67.080},
     [](double x, const Values& b) { return b[0] / (1 + std::exp(b[1] - b[2] * x)); },
     {{100, 1, 0.1}, {75, 2.5, 0.07}},
     {{7.2462237576e1, 1.7340283401}, {2.6180768402, 8.8295217536e-2}, {6.7359200066e-2, 3.4465663377e-3}},
     8.0565229338},
    {"Rat43",
     steps(1, 1, 15),
     {16.08, 33.83, 65.80, 97.20, 191.55, 326.20, 386.87, 520.53, 590.03, 651.92, 724.93, 699.56, 689.96,
      637.56, 717.41},
     [](double x, const Values& b) { return b[0] / std::pow(1 + std::exp(b[1] - b[2] * x), 1 / b[3]); },
     {{100, 10, 1, 1}, {700, 5, 0.75, 1.3}},
     {{6.9964151270e2, 1.6302297817e1},
      {5.2771253025, 2.0828735829},
      {7.5962938329e-1, 1.9566123451e-1},
      {1.2792483859, 6.8761936385e-1}},
     8.7864049080e3},
    {"MGH09",
     {4, 2, 1, 0.5, 0.25, 0.167, 0.125, 0.1, 0.0833, 0.0714, 0.0625},
     {0.1957, 0.1947, 0.1735, 0.1600, 0.0844, 0.0627, 0.0456, 0.0342, 0.0323, 0.0235, 0.0246},
     [](double x, const Values& b) { return b[0] * (x * x + x * b[1]) / (x * x + x * b[2] + b[3]); },
     {{25, 39, 41.5, 39}, {0.25, 0.39, 0.415, 0.39}},
     {{1.9280693458e-1, 1.1435312227e-2},
      {1.9128232873e-1, 1.9633220911e-1},
      {1.2305650693e-1, 8.0842031232e-2},
      {1.3606233068e-1, 9.0025542308e-2}},
     3.0750560385e-4},
    {"MGH10",
     steps(50, 5, 16),
     {34780, 28610, 23650, 19630, 16370, 13720, 11540, 9744, 8261, 7030, 6005, 5147, 4427, 3820, 3307, 2872},
     [](double x, const Values& b) { return b[0] * std::exp(b[1] / (x + b[2])); },
     {{2, 400000, 25000}, {0.02, 4000, 250}},
     {{5.6096364710e-3, 1.5687892471e-4},
      {6.1813463463e3, 2.3309021107e1},
      {3.4522363462e2, 7.8486103508e-1}},
     8.7945855171e1},
};

LeastSquares fitted(const Dataset& set, const std::vector<FitStart>& starts) {
    LeastSquaresOptions options;
    options.mostRounds = 5000;
    return leastSquares(
        starts,
        [&](const std::vector<Values>& points) {
            std::vector<Values> all;
            for (const Values& b : points) {
                Values residuals;
                for (std::size_t i = 0; i < set.x.size(); ++i) {
                    residuals.push_back(set.y[i] - set.model(set.x[i], b));
                }
                all.push_back(std::move(residuals));
            }
            return std::optional(all);
        },
        options);
}

void checkCertified(const Dataset& set, const LeastSquares& found) {
    // Slopes by differences are good to about ten digits; six of the values are what such programs are asked
    // for.
    constexpr double kValueTolerance = 1e-6;
    constexpr double kErrorTolerance = 1e-5;
    CAPTURE(set.name);
    CHECK_THAT(found.squares, WithinRel(set.squares, 1e-8));
    for (std::size_t i = 0; i < set.certified.size(); ++i) {
        CAPTURE(i);
        CHECK_THAT(found.values[i], WithinRel(set.certified[i].value, kValueTolerance));
        REQUIRE(found.standardErrors[i].has_value());
        CHECK_THAT(*found.standardErrors[i], WithinRel(set.certified[i].standardError, kErrorTolerance));
    }
}

} // namespace

TEST_CASE("NIST's certified values and standard errors come of both starts", "[handbook][least-squares]") {
    for (const Dataset& set : kDatasets) {
        for (const Values& start : set.starts) {
            std::vector<FitStart> starts;
            for (const double value : start) {
                starts.push_back({value});
            }
            checkCertified(set, fitted(set, starts));
        }
    }
}

TEST_CASE("they come of the second start between bounds as well", "[handbook][least-squares]") {
    for (const Dataset& set : kDatasets) {
        std::vector<FitStart> starts;
        for (std::size_t i = 0; i < set.certified.size(); ++i) {
            const double value = set.certified[i].value;
            starts.push_back({set.starts[1][i], value / 50, value * 50});
        }
        checkCertified(set, fitted(set, starts));
    }
}
