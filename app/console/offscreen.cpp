#include "app/console/offscreen.h"

namespace pumpwright {

Offscreen::Offscreen() {
    if (QCoreApplication::instance() == nullptr) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        m_application = std::make_unique<QGuiApplication>(m_argumentCount, m_arguments);
    }
}

} // namespace pumpwright
