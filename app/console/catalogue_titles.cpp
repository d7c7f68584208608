#include "app/console/catalogue_titles.h"

#include "app/desktop/data_files.h"
#include "core/files/catalogue.h"

namespace pumpwright {

Result<CatalogueTitles> catalogueTitles() {
    const Result<Catalogue> catalogue = readCatalogue(cataloguePaths());
    if (!catalogue) {
        return tl::unexpected(catalogue.error());
    }
    return titlesOf(*catalogue);
}

} // namespace pumpwright
