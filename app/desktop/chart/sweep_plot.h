#pragma once

#include "core/study/sweep.h"

#include <QWidget>

class QCPColorMap;
class QCPRange;
class QCustomPlot;

namespace pumpwright {

/// A sweep as a picture: a curve over one value, or a map over two. What is good is marked by a ring, the
/// goal by a dashed line, a threshold by a line across it.
class SweepPlot final : public QWidget {
    Q_OBJECT

public:
    explicit SweepPlot(QWidget* parent = nullptr);

    void showSweep(const SweepStudy& study, const Measure& measure, std::optional<double> goal);

    QCustomPlot& plot() { return *m_plot; }

protected:
    void changeEvent(QEvent* event) override;

private:
    void redraw();
    void clear();
    void addCurve();
    void addMap();
    void addGoodRings(const QVector<double>& x, const QVector<double>& y);
    void addThresholds();
    void addGoal();
    double shownValue(const SweepPoint& point) const;
    QCPRange valueRange() const;

    QCustomPlot* m_plot;
    SweepStudy m_study;
    const Measure* m_measure = nullptr; ///< null before the first study
    std::optional<double> m_goal;
};

} // namespace pumpwright
