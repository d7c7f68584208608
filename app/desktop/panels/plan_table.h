#pragma once

#include "app/desktop/panels/quantity_text.h"
#include "core/circuit/circuit.h"

#include <QString>

#include <functional>
#include <vector>

namespace pumpwright {

/// A choice in a cell of a plan table: a switch, on or off.
struct PlanChoice {
    QString id;
    QString label;
};

/// One column of a list of the drive plan. A column has either a quantity or choices.
struct PlanColumn {
    QString title;
    QuantityRange range;
    std::function<double(const DrivePlan&, std::size_t row)> quantity;
    std::function<void(DrivePlan&, std::size_t row, double value)> setQuantity;

    std::vector<PlanChoice> choices;
    std::function<QString(const DrivePlan&, std::size_t row)> choice;
    std::function<void(DrivePlan&, std::size_t row, const QString& id)> setChoice;

    bool isChoice() const { return static_cast<bool>(choice); }
};

/// One list of the drive plan as a table: presses, switch moves, charging spans, altitude points.
struct PlanTable {
    QString title; ///< "Brake presses"
    QString row;   ///< "press"
    QString empty; ///< what it means that there is none
    std::vector<PlanColumn> columns;
    std::function<std::size_t(const DrivePlan&)> rowCount;
    /// Adds a row after the last; returns why it can't, or an empty text.
    std::function<QString(DrivePlan&)> add;
    std::function<void(DrivePlan&, std::size_t row)> remove;
    /// Brings the list into the order of time.
    std::function<void(DrivePlan&)> sort;
};

PlanTable pressTable();
PlanTable switchMoveTable(const Circuit& circuit);
PlanTable chargingTable();
PlanTable altitudeTable();

} // namespace pumpwright
