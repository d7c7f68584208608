#pragma once

#include "app/desktop/panels/plan_table.h"

#include <QWidget>

class QLabel;
class QTableView;
class QToolButton;

namespace pumpwright {

class PlanTableModel;

/// One list of the drive plan with its heading and the buttons to add and take away.
class PlanList final : public QWidget {
    Q_OBJECT

public:
    PlanList(PlanTable table, const ShownUnits& units, QWidget* parent = nullptr);

    PlanTableModel& model() { return *m_model; }
    QTableView& view() { return *m_view; }
    void setPlan(const DrivePlan& plan);

Q_SIGNALS:
    void planEdited(const pumpwright::DrivePlan& plan, const QString& editName);

private:
    void buildView();
    void addRow();
    void removeCurrentRow();
    void showMessage(const QString& text);
    void fitHeight();
    bool eventFilter(QObject* watched, QEvent* event) override;

    PlanTableModel* m_model;
    QTableView* m_view;
    QToolButton* m_add;
    QToolButton* m_remove;
    QLabel* m_empty;
    QLabel* m_message;
};

} // namespace pumpwright
