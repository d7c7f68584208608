#pragma once

#include <QRectF>

#include <string>
#include <vector>

class QPainter;

namespace pumpwright {

/// The cautions in a thick frame behind a warning triangle, as tall as cautionBoxHeight() says at least.
void paintCautionBox(QPainter& painter, const QRectF& box, const std::vector<std::string>& cautions);
double cautionBoxHeight(double width, const std::vector<std::string>& cautions);

} // namespace pumpwright
