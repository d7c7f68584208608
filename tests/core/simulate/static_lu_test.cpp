#include "core/simulate/static_lu.h"
#include "tests/support/catch.h"
#include "tests/support/test_seed.h"

#include <Eigen/Dense>

#include <random>

using namespace pumpwright;

// Eigen's dense solver with full pivoting is the outside reference.
TEST_CASE("sparse factors solve as a dense solver does", "[simulate][static-lu]") {
    const std::uint64_t seed = testSeed();
    INFO("PUMPWRIGHT_SEED=" << seed);
    std::mt19937_64 random(seed);
    std::uniform_real_distribution<double> number(-1, 1);
    for (int round = 0; round < 50; ++round) {
        const int size = 1 + static_cast<int>(random() % 40);
        SparseMatrix matrix(size);
        for (int i = 0; i < size; ++i) {
            matrix.add(i, i, 6 + number(random));
            for (int k = 0; k < 3; ++k) {
                matrix.add(i, static_cast<int>(random() % static_cast<unsigned>(size)), number(random));
            }
        }
        Eigen::MatrixXd dense = Eigen::MatrixXd::Zero(size, size);
        for (std::size_t slot = 0; slot < matrix.places().size(); ++slot) {
            dense(matrix.places()[slot].row, matrix.places()[slot].column) += matrix.values()[slot];
        }
        Eigen::VectorXd right = Eigen::VectorXd::Random(size);
        const EliminationPlan plan = planElimination(matrix);

        StaticLu<double> lu;
        REQUIRE(lu.factorise(plan, matrix.values()));
        std::vector<double> x(right.data(), right.data() + size);
        lu.solve(x);
        const Eigen::VectorXd expected = dense.fullPivLu().solve(right);
        for (int i = 0; i < size; ++i) {
            CHECK(x[static_cast<std::size_t>(i)] == Approx(expected(i)).margin(1e-10));
        }

        std::vector<std::complex<double>> values(matrix.values().begin(), matrix.values().end());
        std::vector<std::complex<double>> z(x.size());
        for (std::size_t i = 0; i < values.size(); ++i) {
            values[i] += std::complex<double>(0, 0.25) * values[i];
        }
        for (std::size_t i = 0; i < z.size(); ++i) {
            z[i] = {right(static_cast<int>(i)), -1.0};
        }
        Eigen::VectorXcd complexRight(size);
        for (int i = 0; i < size; ++i) {
            complexRight(i) = z[static_cast<std::size_t>(i)];
        }
        StaticLu<std::complex<double>> complexLu;
        REQUIRE(complexLu.factorise(plan, values));
        complexLu.solve(z);
        const Eigen::VectorXcd complexExpected =
            (dense.cast<std::complex<double>>() * std::complex<double>(1, 0.25))
                .fullPivLu()
                .solve(complexRight);
        for (int i = 0; i < size; ++i) {
            CHECK(std::abs(z[static_cast<std::size_t>(i)] - complexExpected(i)) < 1e-10);
        }
    }
}

TEST_CASE("a vanishing pivot is said, not divided by", "[simulate][static-lu]") {
    SparseMatrix matrix(2);
    matrix.add(0, 0, 1);
    matrix.add(0, 1, 1);
    matrix.add(1, 0, 1);
    matrix.add(1, 1, 1);
    const EliminationPlan plan = planElimination(matrix);
    StaticLu<double> lu;
    CHECK_FALSE(lu.factorise(plan, matrix.values()));
}
