# Runs clang-tidy over our own folders, never over what moc writes.
find_program(RUN_CLANG_TIDY NAMES run-clang-tidy-14 run-clang-tidy)
if(RUN_CLANG_TIDY)
    add_custom_target(tidy
        COMMAND ${RUN_CLANG_TIDY} -quiet -p ${CMAKE_BINARY_DIR} "${PROJECT_SOURCE_DIR}/(core|app)/.*\\.cpp$"
        WORKING_DIRECTORY ${PROJECT_SOURCE_DIR}
        USES_TERMINAL VERBATIM)
endif()
