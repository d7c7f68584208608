#include "app/console/commands.h"
#include "app/console/error_text.h"
#include "app/console/text_table.h"
#include "core/files/circuit_file.h"

namespace pumpwright {

Outcome netsCommand(const Request& request) {
    const Result<Circuit> circuit = readCircuit(request.file);
    if (!circuit) {
        return unreadable(circuit.error());
    }
    const SheetTable table = netTable(*circuit);
    return {ExitStatus::Fine, tableInForm(table, request.form), ""};
}

} // namespace pumpwright
