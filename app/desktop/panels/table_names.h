#pragma once

class QTableView;

namespace pumpwright {

/// Gives a table's headers and its corner accessible names made from the table's own.
void nameHeaders(QTableView& table);

} // namespace pumpwright
