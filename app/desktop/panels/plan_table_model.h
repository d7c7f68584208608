#pragma once

#include "app/desktop/panels/plan_table.h"

#include <QAbstractTableModel>

namespace pumpwright {

/// One list of the drive plan. It changes nothing itself: a new value is handed on as a whole new plan.
class PlanTableModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Role {
        ChoicesRole = Qt::UserRole, ///< QVariantList of pairs id, label; invalid where a quantity is shown
    };

    PlanTableModel(PlanTable table, const ShownUnits& units, QObject* parent = nullptr);

    const PlanTable& table() const { return m_table; }
    void setTable(PlanTable table); ///< the switches to choose from have changed
    void setPlan(const DrivePlan& plan);
    /// Adds a row at the end or takes one away, by planEdited(). Says why not where it can't.
    QString addRow();
    void removeRowAt(int row);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

Q_SIGNALS:
    void planEdited(const pumpwright::DrivePlan& plan, const QString& editName);
    void refused(const QString& message);

private:
    QString cellText(const PlanColumn& column, std::size_t row) const;
    QVariantList choices(const PlanColumn& column) const;
    bool sameRow(const DrivePlan& one, std::size_t row, const DrivePlan& other, std::size_t otherRow) const;
    void announceValues();
    QString editName(const PlanColumn& column, int row) const;

    PlanTable m_table;
    ShownUnits m_units;
    DrivePlan m_plan;
};

} // namespace pumpwright
