#include "app/desktop/document/selection.h"

namespace pumpwright {

void Selection::select(const SelectedObjects& objects) {
    if (m_objects == objects) {
        return;
    }
    m_objects = objects;
    Q_EMIT changed();
}

void Selection::show(const SelectedObjects& objects) {
    select(objects);
    Q_EMIT showRequested();
}

} // namespace pumpwright
