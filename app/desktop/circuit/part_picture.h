#pragma once

#include "app/desktop/circuit/geometry.h"
#include "core/circuit/circuit.h"

#include <QRectF>
#include <QString>

#include <string>
#include <vector>

namespace pumpwright {

/// Heights of the canvas's texts in scene units.
inline constexpr int kReferenceTextHeight = 13;
inline constexpr int kValueTextHeight = 11;
inline constexpr int kSmallTextHeight = 10;

enum class TextRole { Reference, Value, Note, Number };

/// A text beside a symbol; upright on the sheet.
struct PartText {
    QRectF rect; ///< relative to the part's origin
    QString text;
    TextRole role = TextRole::Value;
};

/// A terminal or port where it is on the sheet.
struct ConnectionPoint {
    std::string name;
    QString meaning;
    GridPoint at;            ///< on the sheet
    Side exit = Side::Right; ///< where a wire leaves
    bool freeExit = false;   ///< wires may leave to any side (a splice)
    bool isPort = false;
};

/// How a part lies on the sheet: everything that drawing and routing need, in scene units relative to the
/// part's origin unless it says otherwise.
struct PartPicture {
    Part part;
    QRectF body;   ///< symbol with its leads, turned
    QRectF extent; ///< with the texts
    std::vector<PartText> texts;
    std::vector<ConnectionPoint> points;
    QPointF markAt; ///< where a finding's mark is put

    QPointF origin() const { return scenePoint(part.at); }
    const ConnectionPoint* point(const std::string& name) const;
};

/// `textScale` as for textFont().
PartPicture pictureOf(const Part& part, double textScale = 1);

/// Round the texts that can be moved, relative to the part's origin; empty where there are none.
QRectF labelRect(const PartPicture& picture);

/// Font of a text role, sized in scene units, but no smaller than `scale` times the smallest text.
QFont textFont(TextRole role, double scale = 1);

/// The value shown beside a symbol, in its display unit, or empty.
QString mainValueText(const Part& part);

} // namespace pumpwright
