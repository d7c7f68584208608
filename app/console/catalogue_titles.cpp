#include "app/console/catalogue_titles.h"

#include "app/desktop/data_files.h"
#include "core/files/catalogue.h"

namespace pumpwright {

Result<CatalogueTitles> catalogueTitles() {
    const Result<Catalogue> catalogue = readCatalogue(cataloguePaths());
    if (!catalogue) {
        return tl::unexpected(catalogue.error());
    }
    CatalogueTitles titles;
    for (const CatalogueEntry& entry : catalogue->entries) {
        titles[entry.id] = entry.title;
    }
    return titles;
}

} // namespace pumpwright
