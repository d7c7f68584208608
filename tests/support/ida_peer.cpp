#include "tests/support/ida_peer.h"

#include "tests/support/sundials_vector.h"

#include <ida/ida.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>

#include <algorithm>

namespace pumpwright::test {

struct IdaPeer::Solver {
    StiffProblem problem;
    Root root;
    SUNContext context = nullptr;
    N_Vector y = nullptr;
    N_Vector rates = nullptr;
    SUNMatrix matrix = nullptr;
    SUNLinearSolver linear = nullptr;
    void* memory = nullptr;
    std::vector<double> slopes;

    std::span<const double> values(N_Vector vector) const {
        return {N_VGetArrayPointer(vector), problem.start.size()};
    }
};

namespace {

template <class S>
int residual(realtype t, N_Vector y, N_Vector rates, N_Vector result, void* user) {
    auto& solver = *static_cast<S*>(user);
    double* r = N_VGetArrayPointer(result);
    const double* slope = N_VGetArrayPointer(rates);
    solver.problem.right(t, solver.values(y), {r, solver.problem.start.size()}, nullptr);
    for (const StiffProblem::Mass& mass : solver.problem.masses) {
        r[mass.row] -= mass.value * slope[mass.column];
    }
    return 0;
}

template <class S>
int jacobian(realtype t, realtype share, N_Vector y, N_Vector, N_Vector, SUNMatrix matrix, void* user,
             N_Vector, N_Vector, N_Vector) {
    auto& solver = *static_cast<S*>(user);
    const std::size_t size = solver.problem.start.size();
    std::vector<double> f(size);
    std::fill(solver.slopes.begin(), solver.slopes.end(), 0.0);
    solver.problem.right(t, solver.values(y), f, solver.slopes.data());
    for (std::size_t column = 0; column < size; ++column) {
        realtype* entries = SUNDenseMatrix_Column(matrix, static_cast<sunindextype>(column));
        for (std::size_t row = 0; row < size; ++row) {
            entries[row] = solver.slopes[row * size + column];
        }
    }
    for (const StiffProblem::Mass& mass : solver.problem.masses) {
        SUNDenseMatrix_Column(matrix, mass.column)[mass.row] -= share * mass.value;
    }
    return 0;
}

template <class S>
int rootValue(realtype t, N_Vector y, N_Vector, realtype* value, void* user) {
    auto& solver = *static_cast<S*>(user);
    *value = solver.root(t, solver.values(y));
    return 0;
}

} // namespace

IdaPeer::IdaPeer(const StiffProblem& problem, double relativeTolerance, Root root)
    : m_solver(std::make_unique<Solver>()) {
    Solver& s = *m_solver;
    s.problem = problem;
    s.root = std::move(root);
    s.slopes.assign(problem.start.size() * problem.start.size(), 0.0);
    SUNContext_Create(nullptr, &s.context);
    s.y = vectorOf(problem.start, s.context);
    s.rates = vectorOf(problem.startRates, s.context);
    s.memory = IDACreate(s.context);
    IDAInit(s.memory, residual<Solver>, 0, s.y, s.rates);
    IDASStolerances(s.memory, relativeTolerance, relativeTolerance * problem.absoluteShare);
    IDASetUserData(s.memory, &s);
    IDASetMaxNumSteps(s.memory, 100'000'000);
    IDASetStopTime(s.memory, problem.end_s);
    s.matrix = SUNDenseMatrix(problem.size(), problem.size(), s.context);
    s.linear = SUNLinSol_Dense(s.y, s.matrix, s.context);
    IDASetLinearSolver(s.memory, s.linear, s.matrix);
    IDASetJacFn(s.memory, jacobian<Solver>);
    if (s.root) {
        IDARootInit(s.memory, 1, rootValue<Solver>);
    }
}

IdaPeer::~IdaPeer() {
    IDAFree(&m_solver->memory);
    SUNLinSolFree(m_solver->linear);
    SUNMatDestroy(m_solver->matrix);
    N_VDestroy(m_solver->y);
    N_VDestroy(m_solver->rates);
    SUNContext_Free(&m_solver->context);
}

IdaPeer::Outcome IdaPeer::step() {
    const int flag = IDASolve(m_solver->memory, m_solver->problem.end_s, &m_time_s, m_solver->y,
                              m_solver->rates, IDA_ONE_STEP);
    if (flag < 0) {
        return Outcome::Failed;
    }
    if (flag == IDA_ROOT_RETURN) {
        return Outcome::Root;
    }
    return flag == IDA_TSTOP_RETURN ? Outcome::End : Outcome::Step;
}

std::span<const double> IdaPeer::y() const {
    return m_solver->values(m_solver->y);
}

long IdaPeer::steps() const {
    long steps = 0;
    IDAGetNumSteps(m_solver->memory, &steps);
    return steps;
}

} // namespace pumpwright::test
