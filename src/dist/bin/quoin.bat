@echo off
rem Starts Quoin with the Java of JAVA_HOME, or the one on the path (17 or later).
rem QUOIN_JAVA_OPTS adds options for that Java, such as -Xmx4g for a very large order.
setlocal
for %%d in ("%~dp0..\lib") do set "lib=%%~fd"
set "java=%JAVA_HOME%\bin\java.exe"
if not defined JAVA_HOME for %%f in (java.exe) do set "java=%%~$PATH:f"
if not exist "%java%" (
    echo quoin: there is no Java here; install a Java runtime 17 or later, or set JAVA_HOME 1>&2
    exit /b 3
)

rem For a quick start, an archive of Quoin's classes as this Java has loaded them, made at the first start and again wherever
rem the folder, the jar or the Java is another. Where it cannot be written or made, or does not fit, Quoin starts without it.
rem No path stands in a block without quotes: a bracket in it, as in Program Files (x86), would end the block.
set "archive=%lib%\classes.jsa"
for %%j in ("%java%") do for %%q in ("%lib%\quoin.jar") do set "this=%%~fj %%~tj %%~fq %%~tq"
set made_for=""
if exist "%archive%.for" set /p made_for=<"%archive%.for"
if %made_for%=="%this%" goto start
"%java%" --version >nul 2>&1 || (
    echo quoin: the Java of JAVA_HOME, or on the path, is too old; install a Java runtime 17 or later 1>&2
    exit /b 3
)
2>nul (>"%archive%.for" echo "being made") || goto start
rmdir /s /q "%lib%\first-run" 2>nul
del /q "%archive%" "%lib%\new.jsa" 2>nul
rem -Xbatch, since methods that wait to be compiled when the archive is made would, from the archive, be waiting for ever.
"%java%" -XX:ArchiveClassesAtExit="%lib%\new.jsa" -Xbatch -XX:TieredStopAtLevel=1 -Xlog:disable -XX:+UseSerialGC ^
    -Djava.awt.headless=true -Dorg.freemarker.loggerLibrary=none -cp "%lib%\quoin.jar" dev.quoin.cli.FirstStart "%lib%\first-start" "%lib%\first-run" >nul 2>&1
if exist "%lib%\new.jsa" move /y "%lib%\new.jsa" "%archive%" >nul 2>&1
rmdir /s /q "%lib%\first-run" 2>nul
>"%archive%.for" echo "%this%"

:start
rem A Java that is told of an archive and finds none does without its own, too.
set shared=-Xshare:auto
if exist "%archive%" set shared=-XX:SharedArchiveFile="%archive%"
"%java%" -XX:+IgnoreUnrecognizedVMOptions %shared% -Xshare:auto -Xlog:disable -XX:-UsePerfData ^
    -XX:TieredStopAtLevel=1 -XX:CICompilerCount=1 -XX:C1MaxInlineLevel=4 -XX:C1MaxInlineSize=20 ^
    -XX:Tier3InvocationThreshold=150 -XX:Tier3MinInvocationThreshold=50 -XX:Tier3CompileThreshold=1000 ^
    -XX:Tier3BackEdgeThreshold=10000 -XX:+UseSerialGC -Xms48m -Xmn40m ^
    -Djava.awt.headless=true -Dsun.font.layout.ffm=false -Dorg.freemarker.loggerLibrary=none ^
    %QUOIN_JAVA_OPTS% -jar "%lib%\quoin.jar" %*
exit /b %ERRORLEVEL%
