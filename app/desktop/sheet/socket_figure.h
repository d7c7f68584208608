#pragma once

#include "core/sheet/socket_view.h"

#include <QRectF>

#include <vector>

class QPainter;

namespace pumpwright {

// Sockets side by side: each a picture with the terminals in their places, and beside it what each is and
// which wires go there.

int socketsPerRow(double width);
double socketRowHeight(const std::vector<SocketView>& row, double width);
void paintSocketRow(QPainter& painter, const QRectF& box, const std::vector<SocketView>& row);

} // namespace pumpwright
