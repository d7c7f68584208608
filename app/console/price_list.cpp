#include "app/console/price_list.h"

#include "app/desktop/data_files.h"
#include "core/files/catalogue.h"

namespace pumpwright {

Result<PriceList> priceList() {
    const Result<Catalogue> catalogue = readCatalogue(cataloguePaths());
    if (!catalogue) {
        return tl::unexpected(catalogue.error());
    }
    return priceListOf(*catalogue);
}

} // namespace pumpwright
