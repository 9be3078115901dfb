# The rules of the house for every target: warnings are errors, and what the presets switch on.

add_library(house_rules INTERFACE)
target_compile_options(
  house_rules
  INTERFACE -Wall
            -Wextra
            -Wpedantic
            -Wconversion
            -Wshadow
            -Wold-style-cast
            -Wnon-virtual-dtor
            -Woverloaded-virtual
            -Werror)
# GCC 12 sees overlaps in `"text" + std::string` that are not there when it optimizes (its bug 105651).
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU" AND CMAKE_CXX_COMPILER_VERSION VERSION_LESS 13)
  target_compile_options(house_rules INTERFACE -Wno-restrict)
endif()
target_include_directories(house_rules INTERFACE "${CMAKE_SOURCE_DIR}" "${CMAKE_BINARY_DIR}/generated")
if(AFTERBEAT_SANITIZE)
  target_compile_options(house_rules INTERFACE -fsanitize=${AFTERBEAT_SANITIZE}
                                               -fno-sanitize-recover=all -fno-omit-frame-pointer)
  target_link_options(house_rules INTERFACE -fsanitize=${AFTERBEAT_SANITIZE})
endif()
if(AFTERBEAT_COVERAGE)
  target_compile_options(house_rules INTERFACE --coverage)
  target_link_options(house_rules INTERFACE --coverage)
endif()

# afterbeat_room(NAME LINKS ...): one static library per room of the house, from the .cpp files of
# the folder that calls it.
function(afterbeat_room name)
  cmake_parse_arguments(ROOM "" "" "LINKS" ${ARGN})
  file(GLOB sources CONFIGURE_DEPENDS "${CMAKE_CURRENT_SOURCE_DIR}/*.cpp")
  add_library(${name} STATIC ${sources})
  target_link_libraries(${name} PUBLIC house_rules ${ROOM_LINKS})
endfunction()

# afterbeat_test(NAME SOURCES... LINKS... LABELS ...): one GoogleTest program, run by ctest.
function(afterbeat_test name)
  cmake_parse_arguments(TEST "" "" "SOURCES;LINKS;LABELS" ${ARGN})
  add_executable(${name} ${TEST_SOURCES})
  target_link_libraries(${name} PRIVATE house_rules ${TEST_LINKS} GTest::gtest GTest::gmock
                                        GTest::gtest_main)
  target_compile_definitions(
    ${name} PRIVATE AFTERBEAT_SOURCE_DIR="${CMAKE_SOURCE_DIR}"
                    AFTERBEAT_BINARY_DIR="${CMAKE_BINARY_DIR}")
  add_test(NAME ${name} COMMAND ${name})
  set_tests_properties(${name} PROPERTIES LABELS "${TEST_LABELS}" TIMEOUT 600)
endfunction()
