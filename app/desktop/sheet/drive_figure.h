#pragma once

#include "core/circuit/circuit.h"
#include "core/simulate/drive.h"
#include "core/units/result.h"

#include <QList>
#include <QPointF>
#include <QRectF>
#include <QString>

class QPainter;

namespace pumpwright {

/// The drive chart as a still picture, for paper and for files: lanes one below the other over one time axis.
struct DriveFigure {
    struct Curve {
        QString name;
        bool stepped = false;
        QList<QPointF> samples; ///< time [s], value in the lane's unit
    };
    /// A level to compare with, across the whole lane.
    struct Level {
        QString name;
        double value;
    };
    struct Lane {
        QString title; ///< with the unit
        QList<Curve> curves;
        QList<Level> levels;
    };
    /// When one contact was closed.
    struct Bar {
        QString name;
        QList<QPointF> closed; ///< from, to [s]
    };
    struct Span {
        double from_s;
        double to_s;
    };

    QString title;
    double duration_s = 0;
    QList<Lane> lanes; ///< without the lanes that have nothing to show
    QList<Bar> bars;
    QList<Span> presses;
};

/// Picks out of a run: vacuum at every port called "vacuum" with the set points, assist asked for and given,
/// motor currents, and every contact.
DriveFigure driveFigure(const Circuit& circuit, const DriveResult& drive);

/// Draws with black text on the white ground that is there. Told apart without colour by dashes.
void paintDriveFigure(QPainter& painter, const QRectF& box, const DriveFigure& figure);

/// The figure as a file, PNG or SVG as its name ends. Needs a QGuiApplication, but no display.
[[nodiscard]] Result<void> writeDriveChart(const QString& path, const DriveResult& drive,
                                           const Circuit& circuit);

} // namespace pumpwright
