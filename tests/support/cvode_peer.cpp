#include "tests/support/cvode_peer.h"

#include "tests/support/sundials_vector.h"

#include <cvode/cvode.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>

#include <algorithm>

namespace pumpwright::test {

struct CvodePeer::Solver {
    Problem problem;
    SUNContext context = nullptr;
    N_Vector y = nullptr;
    N_Vector tolerances = nullptr;
    SUNMatrix matrix = nullptr;
    SUNLinearSolver linear = nullptr;
    void* memory = nullptr;

    std::size_t size() const { return problem.start.size(); }
};

namespace {

template <class S>
int right(realtype t, N_Vector y, N_Vector rates, void* user) {
    auto& solver = *static_cast<S*>(user);
    solver.problem.right(t, {N_VGetArrayPointer(y), solver.size()},
                         {N_VGetArrayPointer(rates), solver.size()});
    return 0;
}

template <class S>
int rootValues(realtype t, N_Vector y, realtype* values, void* user) {
    auto& solver = *static_cast<S*>(user);
    solver.problem.roots(t, {N_VGetArrayPointer(y), solver.size()},
                         {values, static_cast<std::size_t>(solver.problem.rootCount)});
    return 0;
}

} // namespace

CvodePeer::CvodePeer(Problem problem, double relativeTolerance) : m_solver(std::make_unique<Solver>()) {
    Solver& s = *m_solver;
    s.problem = std::move(problem);
    SUNContext_Create(nullptr, &s.context);
    s.y = vectorOf(s.problem.start, s.context);
    s.tolerances = vectorOf(s.problem.absoluteTolerances, s.context);
    s.memory = CVodeCreate(CV_BDF, s.context);
    CVodeInit(s.memory, right<Solver>, 0, s.y);
    CVodeSVtolerances(s.memory, relativeTolerance, s.tolerances);
    CVodeSetUserData(s.memory, &s);
    CVodeSetMaxNumSteps(s.memory, 100'000'000);
    s.matrix =
        SUNDenseMatrix(static_cast<sunindextype>(s.size()), static_cast<sunindextype>(s.size()), s.context);
    s.linear = SUNLinSol_Dense(s.y, s.matrix, s.context);
    CVodeSetLinearSolver(s.memory, s.linear, s.matrix);
    if (s.problem.rootCount > 0) {
        CVodeRootInit(s.memory, s.problem.rootCount, rootValues<Solver>);
    }
}

CvodePeer::~CvodePeer() {
    CVodeFree(&m_solver->memory);
    SUNLinSolFree(m_solver->linear);
    SUNMatDestroy(m_solver->matrix);
    N_VDestroy(m_solver->y);
    N_VDestroy(m_solver->tolerances);
    SUNContext_Free(&m_solver->context);
}

CvodePeer::Outcome CvodePeer::step(double stop_s) {
    CVodeSetStopTime(m_solver->memory, stop_s);
    const int flag = CVode(m_solver->memory, stop_s, m_solver->y, &m_time_s, CV_ONE_STEP);
    if (flag < 0) {
        return Outcome::Failed;
    }
    if (flag == CV_ROOT_RETURN) {
        return Outcome::Root;
    }
    return flag == CV_TSTOP_RETURN ? Outcome::Stop : Outcome::Step;
}

void CvodePeer::restart() {
    m_stepsBefore = steps();
    CVodeReInit(m_solver->memory, m_time_s, m_solver->y);
}

std::span<const double> CvodePeer::y() const {
    return {N_VGetArrayPointer(m_solver->y), m_solver->size()};
}

std::vector<double> CvodePeer::at(double time_s) const {
    N_Vector there = N_VClone(m_solver->y);
    CVodeGetDky(m_solver->memory, time_s, 0, there);
    const double* values = N_VGetArrayPointer(there);
    std::vector<double> copy(values, values + m_solver->size());
    N_VDestroy(there);
    return copy;
}

long CvodePeer::steps() const {
    long steps = 0;
    CVodeGetNumSteps(m_solver->memory, &steps);
    return m_stepsBefore + steps;
}

} // namespace pumpwright::test
